package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cantonment.domain.common.Span;
import org.junit.jupiter.api.Test;

/** What is outside its era is said once, whatever follows from it. */
class AftermathTest {

    private static final BookOf BOOK = new BookOf("Lake").eras("Reed", "Thaw").unit("Staff", strength(1, 5))
            .unit("Guard", strength(2, 6)).unit("Kites", strength(2, 8).from("Thaw"), available().from("Thaw"))
            .formation("Lock", billet("Command", Span.exactly(1), "Staff"), billet("Line", Span.exactly(1), "Guard"))
            .formation("Flight", available().from("Thaw"), billet("Command", Span.exactly(1), "Staff"));

    private static List<String> in(String era, ListOf.Row... rows) {
        return Court.breaches(Court.judge(Court.ruling(Court.in("Lake/" + era), BOOK),
                new ListOf("Anna/4", "Lake").add(rows)));
    }

    @Test
    void aUnitThatIsNotYetThereNeedsNoPlaceAndNoOfferedStrength() {
        ListOf.Row lock = formation("Lock", one("Staff"), one("Guard"), one("Kites").of(7));
        assertEquals(List.of("era.not-yet"), in("Reed", lock));
        assertEquals(List.of("billet.wrong-kind", "strength.not-offered"), in("Thaw", lock));
    }

    @Test
    void aUnitThatIsNotYetThereIsNotLooseEither() {
        assertEquals(List.of("era.not-yet"), in("Reed", one("Kites").of(2)));
        assertEquals(List.of("unit.loose"), in("Thaw", one("Kites").of(2)));
    }

    @Test
    void aFormationThatIsNotYetThereNeedsNobodyInItsBillets() {
        assertEquals(List.of("era.not-yet"), in("Reed", formation("Flight")));
        assertEquals(List.of("billet.empty"), in("Thaw", formation("Flight")));
    }

    @Test
    void whatStandsInSuchAFormationIsStillJudged() {
        assertEquals(List.of("era.not-yet", "billet.wrong-kind"), in("Reed", formation("Flight", one("Staff"),
                one("Guard"))));
    }
}
