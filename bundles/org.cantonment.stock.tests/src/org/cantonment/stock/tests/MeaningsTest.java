package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.lets;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Things.oneTable;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** One table, one meaning: five crank cars for a list of three crank cars and two tread wagons. Solved by hand. */
class MeaningsTest {

    private static final Requirement CRANKS = need("Cranks", 3, "Crank-Car");
    private static final Requirement TREADS = need("Treads", 2, "Tread-Wagon");
    private static final List<Requirement> LIST = List.of(CRANKS, TREADS);

    private static Things cars() {
        return new Things().piece("Crank-Car", null).piece("Tread-Wagon", null).piece("Pike-Car", null)
                .has("5 Crank-Car");
    }

    @Test
    void withoutTheRuleItIsFieldable() {
        Turnout turnout = cars().depot(lets("Crank-Car", "Tread-Wagon")).turnout(LIST, CancelToken.NEVER);
        assertTrue(turnout.complete());
        assertEquals(2, turnout.standing(Truth.STAND_IN));
    }

    @Test
    void withTheRuleTwoAreShortWhicheverWay() {
        Turnout turnout = cars().depot(lets("Crank-Car", "Tread-Wagon"), oneTable()).turnout(LIST, CancelToken.NEVER);
        assertEquals(2, turnout.lacking());
        assertTrue(turnout.proven() && turnout.truest());
        assertEquals(3, turnout.standing(Truth.EXACT));
        Reason.OneMeaning reason = (Reason.OneMeaning) turnout.reasons().get(0);
        assertEquals(1, turnout.reasons().size());
        assertEquals(2, reason.lacking());
        assertEquals(List.of(Map.of(id("Crank-Car"), true), Map.of(id("Crank-Car"), false)),
                reason.cases().stream().map(Reason.Case::itself).toList());
        assertEquals(List.of(2, 3), reason.cases().stream().map(Reason.Case::lacking).toList());
    }

    @Test
    void twoPikeCarsMendIt() {
        Turnout turnout = cars().has("2 Pike-Car")
                .depot(lets("Crank-Car", "Tread-Wagon"), lets("Pike-Car", "Tread-Wagon"), oneTable())
                .turnout(LIST, CancelToken.NEVER);
        assertTrue(turnout.complete());
        assertEquals(2, turnout.standing(Truth.STAND_IN));
        assertEquals(1, cars().has("Pike-Car")
                .depot(lets("Crank-Car", "Tread-Wagon"), lets("Pike-Car", "Tread-Wagon"), oneTable())
                .turnout(LIST, CancelToken.NEVER).lacking());
    }

    @Test
    void oneWayOnly() {
        Turnout turnout = cars().depot(lets("Tread-Wagon", "Crank-Car")).turnout(LIST, CancelToken.NEVER);
        assertEquals(2, turnout.lacking());
        assertEquals(List.of(TREADS), turnout.reasons().get(0).needs());
    }

    @Test
    void linesInACircleGoOneStepAndNoFurther() {
        Turnout turnout = new Things().piece("A", null).piece("B", null).piece("C", null).has("3 A")
                .depot(lets("A", "B"), lets("B", "C"), lets("C", "A"))
                .turnout(List.of(need("One", 1, "B"), need("Two", 1, "C")), CancelToken.NEVER);
        assertEquals(1, turnout.filled());
        assertEquals("List/Two", turnout.reasons().get(0).needs().get(0).entry().text());
    }
}
