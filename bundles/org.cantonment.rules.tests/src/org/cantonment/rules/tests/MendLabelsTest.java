package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Mend;
import org.cantonment.rules.Verdict;
import org.junit.jupiter.api.Test;

/** Whoever chooses between mends can tell them apart. */
class MendLabelsTest {

    private static final BookOf BOOK = new BookOf("Lake").unit("Staff", strength(1, 5)).unit("Tread", strength(3, 24))
            .formation("Lock", billet("Command", Span.of(0, 1), "Staff"), billet("Line", Span.of(0, 3), "Tread"))
            .limit("Few", bound(Span.atMost(2), "Tread")).limit("Staffed", bound(Span.atLeast(1), "Staff"));

    private static List<String> labels(String code, ListOf.Row... rows) {
        Verdict verdict = Court.judge(Court.ruling(Occasion.UNKNOWN, BOOK), new ListOf("Anna/4", "Lake").add(rows));
        return verdict.findings().stream().filter(finding -> finding.code().equals(code)).findFirst().orElseThrow()
                .mends().stream().map(Mend::label).toList();
    }

    @Test
    void theLineAtWhichTheFindingStandsNeedsNoTelling() {
        assertEquals(List.of("Strike Tread."), labels("limit.at-most",
                formation("Lock", one("Staff"), one("Tread"), one("Tread"), one("Tread"))));
    }

    @Test
    void linesThatReadAlikeAreToldByTheirNumber() {
        assertEquals(List.of("Strike Tread (the second).", "Strike Tread (the third)."), labels("limit.at-most",
                formation("Lock", one("Staff"), one("Tread"), one("Tread")), formation("Lock", one("Tread"))));
    }

    @Test
    void aLineWithANameOfItsOwnIsToldByThat() {
        assertEquals(List.of("Strike Tread (Reds).", "Strike Tread (the third)."), labels("limit.at-most",
                formation("Lock", one("Staff"), one("Tread"), one("Tread").as("Reds")),
                formation("Lock", one("Tread"))));
    }

    @Test
    void ofFormationsThatReadAlikeItIsToldIntoWhich() {
        assertEquals(List.of("Add Staff of 1, 5 points (to Lock, the first)."), labels("limit.at-least",
                formation("Lock", one("Tread")), formation("Lock", one("Tread"))));
        assertEquals(List.of("Add Staff of 1, 5 points."), labels("limit.at-least", formation("Lock", one("Tread"))));
    }
}
