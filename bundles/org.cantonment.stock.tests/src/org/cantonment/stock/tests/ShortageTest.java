package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.allows;
import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.lets;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Things.needOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** Four units, four types: two short, for a reason that can be counted on the fingers. Numbers solved by hand. */
class ShortageTest {

    private static final Requirement GUNS = needOf("Guns", "Gun-Troop", 4, "Gun-Wagon");
    private static final Requirement STAFF = needOf("Staff", "Staff", 2, "Gun-Wagon");
    private static final Requirement SURVEY = needOf("Survey", "Survey", 3, "Scout-Cart");
    private static final Requirement MARSH = needOf("Marsh", "Marsh-Troop", 10, "Marsh-Foot");
    private static final List<Requirement> LIST = List.of(GUNS, STAFF, SURVEY, MARSH);
    private static final Fact[] KINDRED = {
        lets("Long-Wagon", "Book/Gun-Troop"), lets("Gun-Wagon", "Book/Survey")};

    private static Things shelf() {
        return new Things().piece("Gun-Wagon", null).piece("Long-Wagon", null).piece("Scout-Cart", null)
                .piece("Marsh-Foot", null).unit("Gun-Troop", "4 Gun-Wagon").unit("Staff", "2 Gun-Wagon")
                .unit("Survey", "3 Scout-Cart").unit("Marsh-Troop", "10 Marsh-Foot")
                .has("4 Gun-Wagon").has("2 Long-Wagon").has("Scout-Cart").has("14 Marsh-Foot");
    }

    private static Turnout ask(Depot depot, List<Requirement> needs) {
        return depot.turnout(needs, CancelToken.NEVER);
    }

    @Test
    void theThreeTogetherNeedNineAndSevenAreAllThereIs() {
        Turnout turnout = ask(shelf().depot(KINDRED), LIST);
        assertEquals(17, turnout.filled());
        assertEquals(19, turnout.needed());
        assertTrue(turnout.proven() && turnout.truest());
        Reason.Block block = (Reason.Block) only(turnout.reasons());
        assertEquals(Set.of(GUNS, STAFF, SURVEY), Set.copyOf(block.needs()));
        assertEquals(9, block.needed());
        assertEquals(7, block.there());
        assertEquals(2, block.lacking());
        assertEquals(List.of(4, 2, 1), block.from().stream().map(Reason.Source::pieces).toList());
    }

    @Test
    void everyOneAndEveryTwoOfThemCanBeServed() {
        Depot depot = shelf().depot(KINDRED);
        List<Requirement> three = List.of(GUNS, STAFF, SURVEY);
        for (Requirement one : three) {
            assertTrue(ask(depot, List.of(one)).complete());
            List<Requirement> others = new ArrayList<>(three);
            others.remove(one);
            assertTrue(ask(depot, others).complete());
            assertEquals(Set.of(), depot.lacking(others, CancelToken.NEVER));
        }
        assertEquals(Set.of(GUNS.entry(), STAFF.entry(), SURVEY.entry()), depot.lacking(LIST, CancelToken.NEVER));
    }

    @Test
    void theTruestHasFiveExactAndTwoThatAreNot() {
        Turnout turnout = ask(shelf().depot(KINDRED), LIST);
        assertEquals(15, turnout.standing(Truth.EXACT));
        assertEquals(2, turnout.standing(Truth.STAND_IN));
        assertEquals(10, turnout.filled(MARSH));
        // No gun wagon stands in for the survey while guns or staff have too few of their own.
        assertEquals(1, turnout.filled(SURVEY));
        assertEquals(6, turnout.filled(GUNS) + turnout.filled(STAFF));
    }

    @Test
    void exactOnlyHasTwoBlocksAndBothAreNamed() {
        Turnout turnout = ask(shelf().depot(allows(Level.EXACT)), LIST);
        assertEquals(4, turnout.lacking());
        assertEquals(2, turnout.reasons().size());
        Reason.Block wagons = (Reason.Block) turnout.reasons().get(0);
        assertEquals(List.of(GUNS, STAFF), wagons.needs());
        assertEquals(List.of(6, 4), List.of(wagons.needed(), wagons.there()));
        Reason.Block survey = (Reason.Block) turnout.reasons().get(1);
        assertEquals(List.of(SURVEY), survey.needs());
        assertEquals(List.of(3, 1), List.of(survey.needed(), survey.there()));
        assertEquals(turnout.lacking(), turnout.reasons().stream().mapToInt(Reason::lacking).sum());
    }

    @Test
    void whatWouldMendItDoes() {
        assertTrue(ask(shelf().has("2 Scout-Cart").depot(KINDRED), LIST).complete());
        assertTrue(ask(shelf().has("2 Long-Wagon").depot(KINDRED), LIST).complete());
        assertEquals(1, ask(shelf().has("Scout-Cart").depot(KINDRED), LIST).lacking());
        assertTrue(ask(shelf().has("2 Scout-Cart").has("2 Gun-Wagon").depot(), LIST).complete());
        assertEquals(1, ask(shelf().has("2 Scout-Cart").has("Gun-Wagon").depot(), LIST).lacking());
    }

    @Test
    void aNeedThatNobodyCanFillIsABlockWithNothingInIt() {
        Turnout turnout = ask(shelf().depot(), List.of(need("Odd", 2, "Nowhere/Nothing")));
        Reason.Block block = (Reason.Block) only(turnout.reasons());
        assertEquals(List.of(), block.from());
        assertEquals(2, block.lacking());
        assertEquals(List.of(Id.of("List/Odd")), block.needs().stream().map(Requirement::entry).toList());
        assertEquals(id("Gun-Wagon"), Id.of("Range/Gun-Wagon"));
    }

    private static <T> T only(List<T> all) {
        assertEquals(1, all.size(), all.toString());
        return all.get(0);
    }
}
