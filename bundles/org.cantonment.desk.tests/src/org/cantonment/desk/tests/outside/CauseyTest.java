package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** One squadron of an invented war, written for one era and judged in three; every sum was worked out by hand. */
class CauseyTest {
    private final Books books = Books.of("causey");

    @Test
    void sumsAreThoseWorkedOutByHand() {
        assertEquals(Map.of("dyke", 10 + 40 + 20 + 20 + 8L, "reed", 98L, "reed-mended", 90L, "thaw",
                12 + 45 + 20 + 20 + 8L, "thaw-struck", 65L, "thaw-one-pike", 91L, "thaw-second-tread", 92L,
                "thaw-swapped", 117L, "thaw-swapped-and-cut", 99L), books.points());
    }

    @Test
    void asWrittenAndAsMendedItIsLegal() {
        for (String legal : List.of("dyke", "reed-mended", "thaw-one-pike", "thaw-second-tread",
                "thaw-swapped-and-cut")) {
            assertEquals(List.of(), books.said(legal), legal);
        }
        assertEquals(List.of(), books.saidOfBooks());
    }

    @Test
    void anEraBeforeOnlyTheScoutsAreAtFault() {
        assertEquals(List.of("reed.list:8 [Marsh-Scouts] breach era.not-yet by "
                + "causey.rules:25 [available from Dyke-War]"), books.said("reed"));
        assertEquals(List.of("Strike Marsh scouts."), books.mends("reed", 0));
        books.mend("reed", 0);
        assertEquals(List.of(), books.said("reed"));
        assertEquals(90, books.points().get("reed"));
    }

    @Test
    void anEraAfterEachCrankTroopIsAtFault() {
        // 105 points in all, but 40 of them must go anyway: they are not held against the limit of 100.
        String rule = " [Crank-Troop] breach era.no-longer by causey.rules:19 [becomes Pike-Car-Troop from Long-Thaw]";
        assertEquals(List.of("thaw.list:6" + rule, "thaw.list:7" + rule), books.said("thaw"));
        assertEquals(List.of("Take Pike car troop of 4 instead, 26 points each.", "Strike Crank troop."),
                books.mends("thaw", 0));
    }

    @Test
    void strikingBothLeavesACompulsoryPlaceOpen() {
        assertEquals(List.of("thaw-struck.list:3 [Causey-Squadron] breach billet.short by causey.rules:28 "
                + "[billet Line 2 to 3 of Tread-Troop, Crank-Troop, Pike-Car-Troop]"), books.said("thaw-struck"));
        assertEquals(List.of("Add Pike car troop of 4, 26 points."), books.mends("thaw-struck", 0));
        books.mend("thaw-struck", 0);
        assertEquals(List.of(), books.said("thaw-struck"));
        assertEquals(91, books.points().get("thaw-struck"));
    }

    @Test
    void theStraightSwapIs17Over() {
        assertEquals(List.of("thaw-swapped.list:2 [list Thaw-Swapped under Causey-Book in Long-Thaw to 100 points] "
                + "breach points.over"), books.said("thaw-swapped"));
        assertEquals(List.of("The list uses 117 points of 100: 17 too many."), books.sentences("thaw-swapped"));
        // 45 less 27 is 18, just enough; it leaves 99.
        assertEquals("Take Tread troop at strength 3, 27 points each.", books.mends("thaw-swapped", 0).get(0));
        books.mend("thaw-swapped", 0);
        assertEquals(List.of(), books.said("thaw-swapped"));
        assertEquals(99, books.points().get("thaw-swapped"));
    }
}
