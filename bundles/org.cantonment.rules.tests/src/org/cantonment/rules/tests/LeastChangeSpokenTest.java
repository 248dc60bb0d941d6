package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.option;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.one;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Comparison.Relation;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Measure;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.Surcharge;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** The least change where rules ask in expressions for what no price tells; worked out by hand. */
class LeastChangeSpokenTest {

    private static Answer least(BookOf book, ListOf list, Situation situation) {
        Ruling ruling = Court.ruling(Court.in("B/Now"), book);
        Found found = LeastChange.search(ruling, ruling, list.build(), situation, Fielding.ALL, 1, LeastChange.MOST);
        assertTrue(found.complete());
        return found.answers().get(0);
    }

    private static Answer least(BookOf book, ListOf list) {
        return least(book, list, Situation.BARE);
    }

    private static Expression atLeast(Expression what, int number) {
        return new Comparison(Relation.AT_LEAST, what, new Figure(Ratio.of(number)));
    }

    private static Line always(Expression expression) {
        return new Line((id, names, when) -> new Always(id, expression, when));
    }

    /** So much cheaper while there is one of another. */
    private static Line cheaper(int points, String unit) {
        Expression many = atLeast(new Quantity(Measure.COUNT, Selection.of(Id.of("B", unit)), Stretch.HERE), 1);
        return new Line((id, names, when) -> new Surcharge(id, true, new Figure(Ratio.of(points)), false,
                Optional.of(many), when));
    }

    @Test
    void anOptionForNothingIsTakenWhereARuleAsksForIt() {
        BookOf book = new BookOf("B").eras("Now").unit("Skiff", strength(1, 6), option("Flag", 0))
                .limit("Flags", always(atLeast(new OptionsTaken(Optional.empty(), Selection.units()), 1)));
        Answer answer = least(book, new ListOf("L", "B").add(one("Skiff")));
        assertEquals(List.of(new SetOption(Id.of("L#1"), "Flag", 1)), answer.actions());
        assertEquals(List.of(0L, 1), List.of(answer.moved(), answer.units()));
    }

    @Test
    void aStrengthForTheSamePointsIsTakenWhereARuleAsksForIt() {
        BookOf book = new BookOf("B").eras("Now").unit("Skiff", strength(1, 6), strength(2, 6))
                .limit("Strong", always(new Gathering(Gathering.Act.ANY, Selection.units(),
                        atLeast(new Own(Own.What.STRENGTH), 2))));
        Answer answer = least(book, new ListOf("L", "B").add(one("Skiff").of(1)));
        assertEquals(List.of(new SetStrength(Id.of("L#1"), 2)), answer.actions());
        assertEquals(List.of(0L, 1), List.of(answer.moved(), answer.units()));
    }

    /** Two rafts at 10 are more than 10 points, until a punt makes them 5 each: 5 and 4 come, which is less than a galley. */
    @Test
    void whatAFormulaTakesOffMakesRoomUnderABound() {
        BookOf book = new BookOf("B").eras("Now").unit("Raft", strength(1, 10), cheaper(5, "Punt"))
                .unit("Punt", strength(1, 4)).unit("Galley", strength(1, 12))
                .limit("Two", bound(Span.atLeast(2), "Raft", "Galley"))
                .limit("Little", bound(org.cantonment.domain.rules.Measure.POINTS, Span.atMost(10),
                        Rounding.EXACT, "Raft"));
        Answer answer = least(book, new ListOf("L", "B").add(one("Raft")));
        assertEquals(List.of(9L, 2), List.of(answer.moved(), answer.units()));
    }

    /**
     * The contingent's rafts are 10 each without a punt of their own, and 20 are too many for its 12. A punt would make both
     * 5, and be too many itself with its 4; so one raft goes.
     */
    @Test
    void aContingentIsPricedByItsOwnFormulas() {
        BookOf own = new BookOf("B").eras("Now").unit("Raft", strength(1, 10), cheaper(5, "Punt"))
                .unit("Punt", strength(1, 4));
        ListOf list = new ListOf("L", "B").add(one("Punt")).contingent(new ListOf("L/Fens", "B").to(12)
                .add(one("Raft"), one("Raft")));
        Situation situation = Situation.BARE.withContingents(Map.of(Id.of("L/Fens"),
                Court.ruling(Court.in("B/Now"), own)));
        Answer answer = least(own, list, situation);
        assertTrue(answer.verdict().legal());
        assertEquals(List.of(new RemoveEntry(Id.of("L/Fens#1"))), answer.actions());
        assertEquals(List.of(10L, 1), List.of(answer.moved(), answer.units()));
    }
}
