package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Court.codes;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.either;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Direction;
import org.cantonment.rules.Verdict;
import org.junit.jupiter.api.Test;

/** Books that go round in circles, and formations with more ways than can be tried, still get an answer. */
class CirclesTest {

    @Test
    void booksThatStandOverOneAnother() {
        BookOf one = new BookOf("One", "Two").unit("Raft", strength(1, 5)).limit("Few", bound(Span.atMost(3), "Raft"))
                .change(Direction.TIGHTEN, "Few", bound(Span.atMost(2), "Raft"));
        BookOf two = new BookOf("Two", "One").change(Direction.TIGHTEN, "One/Few", bound(Span.atMost(1), "One/Raft"));
        Verdict verdict = Court.judge(Court.ruling(Occasion.UNKNOWN, one, two),
                new ListOf("L", "One").add(ListOf.some(2, "Raft")));
        assertEquals(List.of("limit.at-most"), breaches(verdict));
    }

    @Test
    void formationsThatNeedThemselves() {
        BookOf book = new BookOf("B").formation("Egg", billet("In", Span.exactly(1), "Hen"))
                .formation("Hen", billet("In", Span.exactly(1), "Egg")).unit("Chick", strength(1, 5));
        Verdict verdict = Court.judge(Court.ruling(Occasion.UNKNOWN, book), new ListOf("L", "B").add(one("Egg")));
        assertEquals(List.of("billet.empty"), breaches(verdict));
        assertEquals(List.of(), verdict.findings().get(0).mends());
    }

    @Test
    void erasThatComeAfterOneAnother() {
        BookOf book = new BookOf("B").eras("First", "Second", "First").unit("Raft", strength(1, 5),
                strength(1, 6).from("Second"));
        assertEquals(6, Court.judge(Court.ruling(Court.in("B/Second"), book), new ListOf("L", "B").add(one("Raft")))
                .points());
    }

    @Test
    void billetsWithMoreWaysThanCanBeTried() {
        Line[] billets = new Line[40];
        for (int i = 0; i < billets.length; i++) {
            billets[i] = either("B" + i, Span.exactly(2), "Raft", Span.exactly(2), "Punt");
        }
        BookOf book = new BookOf("B").unit("Raft", strength(1, 5)).unit("Punt", strength(1, 5)).formation("F", billets);
        Verdict verdict = Court.judge(Court.ruling(Occasion.UNKNOWN, book), new ListOf("L", "B").add(formation("F",
                some(39, "Raft"), some(41, "Punt"))));
        assertEquals(List.of("billet.unproven"), codes(verdict, Severity.CAUTION));
        assertEquals(2, breaches(verdict).size());
        assertEquals(List.of(), Court.judge(Court.ruling(Occasion.UNKNOWN, book), new ListOf("L", "B").add(
                formation("F", some(38, "Raft"), some(42, "Punt")))).findings());
        assertEquals(List.of(), codes(Court.judge(Court.ruling(Occasion.UNKNOWN, book), new ListOf("L", "B").add(
                formation("F", some(80, "Raft"), some(40, "Punt")))), Severity.CAUTION));
    }
}
