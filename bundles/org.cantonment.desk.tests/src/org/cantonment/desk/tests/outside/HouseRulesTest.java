package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** A published book, a layer for four rounds and one for a weekend, all invented; every sum was worked out by hand. */
class HouseRulesTest {
    private static final String TREADS = " by winter.rules:3 [at most 2 of Tread-Troop]";
    private static final String ARMOUR = " by winter.rules:5 [at most 40 percent of points used on Armour]";
    private static final String WEEKEND = " by weekend.rules:3 [at most 4 of Tread-Troop]";
    private static final String PUBLISHED_TREADS = " by published.rules:13 [at most 3 of Tread-Troop]";
    private static final String PUBLISHED_ARMOUR =
            " by published.rules:15 [at most 50 percent of the limit on Armour]";
    private static final String THIRD = ":6 [Tread-Troop] ";
    private static final String FOURTH = ":7 [Tread-Troop] ";
    private static final String UNSAID = "weekend.rules:3 [at most 4 of Tread-Troop] breach layer.";

    private final Books books = Books.of("house-rules");

    @Test
    void sumsAreThoseWorkedOutByHand() {
        assertEquals(Map.of("quill-2", 140L, "nib-2", 120L, "brack-2", 140L, "quill-3", 140L, "nib-3", 150L, "tessel-3",
                149L, "brack-3", 180L, "quill-5", 140L, "brack-5", 150L), books.points());
        assertEquals(List.of(), books.saidOfBooks());
    }

    @Test
    void inRoundTwoBothWinterRulesAreBrokenAndOneTroopLessMendsBoth() {
        assertEquals(List.of("quill-2.list" + THIRD + "breach limit.at-most" + TREADS,
                "quill-2.list" + THIRD + "breach limit.at-most" + ARMOUR), books.said("quill-2"));
        assertEquals(List.of("Armour (Winter): at most 40 percent of points used on Armour, that is 56 of 140; the list "
                + "has 60 points, 4 too many.", "Tread troops (Winter): at most 2 of Tread troop; the list has 3, 1 too "
                + "many."), books.sentences("quill-2"));
        assertEquals(List.of(), books.said("nib-2"));
        for (int finding : List.of(0, 1)) {
            assertEquals("Strike Tread troop (mends 2 findings).", books.mends("quill-2", finding).get(0));
        }
        books.mend("quill-2", 1);
        assertEquals(List.of(), books.said("quill-2"));
        assertEquals(120, books.points().get("quill-2"));
    }

    @Test
    void aDispensationMakesANoteOfOneBreachAndLeavesTheOther() {
        assertEquals(List.of("brack-2.list" + THIRD + "note limit.at-most" + TREADS,
                "brack-2.list" + THIRD + "breach limit.at-most" + ARMOUR), books.said("brack-2"));
        assertEquals("Tread troops (Winter): at most 2 of Tread troop; the list has 3, 1 too many. Excused by Ombra: "
                + "Birthday.", books.sentences("brack-2").get(1));
    }

    @Test
    void inRoundThreeTheWeekendRelaxesTheTroopsAndTenPointsOfFootMendTheArmour() {
        assertEquals(List.of("quill-3.list" + THIRD + "breach limit.at-most" + ARMOUR,
                "quill-3.list" + THIRD + "note limit.relaxed" + WEEKEND), books.said("quill-3"));
        assertEquals("Take Foot at strength 90, 90 points each.", books.mends("quill-3", 0).get(0));
        books.mend("quill-3", 0);
        assertEquals(List.of("quill-3.list" + THIRD + "note limit.relaxed" + WEEKEND), books.said("quill-3"));
        assertEquals(150, books.points().get("quill-3"));
        // 40 percent of 150 is 60, exactly; of 149 it is 59.6.
        assertEquals(List.of("nib-3.list" + THIRD + "note limit.relaxed" + WEEKEND), books.said("nib-3"));
        assertEquals("Armour (Winter): at most 40 percent of points used on Armour, that is 59.6 of 149; the list has 60 "
                + "points, 0.4 too many.", books.sentences("tessel-3").get(0));
    }

    @Test
    void theWeekendRelaxesNothingButTheTroops() {
        assertEquals(List.of("brack-3.list:2 [list by Brack round 3] breach points.over by "
                + "season.campaign:13 [limit 150 points]", "brack-3.list" + FOURTH + "breach limit.at-most" + ARMOUR,
                "brack-3.list" + FOURTH + "breach limit.at-most" + PUBLISHED_ARMOUR,
                "brack-3.list" + THIRD + "note limit.relaxed" + WEEKEND).stream().sorted().toList(),
                books.said("brack-3").stream().sorted().toList());
    }

    @Test
    void inRoundFiveOnlyThePublishedBookIsLeft() {
        assertEquals(List.of(), books.said("quill-5"));
        assertEquals(List.of("brack-5.list" + FOURTH + "breach limit.at-most" + PUBLISHED_TREADS,
                "brack-5.list" + FOURTH + "breach limit.at-most" + PUBLISHED_ARMOUR), books.said("brack-5"));
    }

    @Test
    void aWeekendOverWinterThatLoosensDoesTheSame() {
        List<String> before = books.said("quill-3");
        books.retype("weekend.rules", "over Published", "over Winter");
        assertEquals(List.of(), books.saidOfBooks());
        assertEquals(before, books.said("quill-3"));
        assertEquals(List.of(), books.said("quill-5"));
    }

    @Test
    void aWeekendThatDoesNotSayThatItRelaxesIsAtFaultAndTheStrictestStands() {
        Books unsaid = Books.of("house-rules-unsaid");
        assertEquals(List.of(UNSAID + "collide" + TREADS, UNSAID + "relaxes-unsaid" + PUBLISHED_TREADS),
                unsaid.saidOfBooks());
        strictest(unsaid);
        unsaid.retype("weekend.rules", "over Published", "over Winter");
        assertEquals(List.of(UNSAID + "relaxes-unsaid" + TREADS), unsaid.saidOfBooks());
        strictest(unsaid);
    }

    private static void strictest(Books unsaid) {
        assertEquals(List.of("quill-3.list" + THIRD + "breach limit.at-most" + TREADS,
                "quill-3.list" + THIRD + "breach limit.at-most" + ARMOUR), unsaid.said("quill-3"));
        assertEquals(List.of(), unsaid.said("nib-3"));
        assertEquals(Map.of("quill-3", 140L, "nib-3", 120L), unsaid.points());
    }
}
