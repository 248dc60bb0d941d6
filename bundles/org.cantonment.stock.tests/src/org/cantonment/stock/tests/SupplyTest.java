package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.contents;
import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Guess;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** What a shelf comes to when it is counted. */
class SupplyTest {

    private static Things things() {
        return new Things().piece("Spotter", null).piece("Carrier", null).piece("Officer", null)
                .part("Frame", "2 Spotter", "3 Carrier").part("Hull", Fixing.LOOSE_BETWEEN_GAMES, "Spotter", "Carrier")
                .box("Section", "2 Frame", "Officer").box("Bundle", "2 Section", "Frame");
    }

    private static Supply count(Things things) {
        return Supply.of(things.catalogue(), List.of(things.shelf()));
    }

    private static Map<String, Integer> pieces(Supply supply) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Stack stack : supply.stacks()) {
            counts.put(stack.what().name(), stack.counted());
        }
        return counts;
    }

    private static int frames(Supply supply) {
        return supply.frames().stream().mapToInt(Frames::count).sum();
    }

    @Test
    void aBoxUnopenedIsItsPartsAndPieces() {
        Supply supply = count(things().has("3 Section"));
        assertEquals(Map.of("Officer", 3), pieces(supply));
        assertEquals(6, frames(supply));
        Supply bundle = count(things().has("Bundle"));
        assertEquals(Map.of("Officer", 2), pieces(bundle));
        assertEquals(5, frames(bundle));
    }

    @Test
    void whatWasBuiltUsesUpTheFewestPartsAndTheRestLiesThereStill() {
        Supply supply = count(things().has("2 Section", "built 3 Carrier, 2 Spotter, Officer"));
        assertEquals(Map.of("Carrier", 3, "Spotter", 2, "Officer", 2), pieces(supply));
        assertEquals(2, frames(supply));
        assertEquals(List.of(), supply.findings());
    }

    @Test
    void whatIsSaidToBeLeftWasNotBuilt() {
        Things either = new Things().piece("Barge", null).part("Gun-Kit", "Barge").part("Kit", "Barge")
                .box("Flotilla", "Gun-Kit", "Kit").has("Flotilla", "built Barge", "left Gun-Kit");
        Supply supply = count(either);
        assertEquals(List.of(), supply.findings());
        assertEquals(List.of(id("Gun-Kit")), supply.frames().stream().map(Frames::part).toList());
    }

    @Test
    void whatIsLostOrSaidNotToBeLeftIsGone() {
        assertEquals(3, frames(count(things().has("2 Section", "lost Frame"))));
        Supply lost = count(things().has("2 Section", "lost Officer, 2 Spotter", "left 2 Frame"));
        assertEquals(Map.of("Officer", 1), pieces(lost));
        assertEquals(2, frames(lost));
        assertEquals(List.of(), lost.findings());
    }

    @Test
    void aClaimBeyondItsPartsIsFoundAndCountedAsFarAsItCanBeTrue() {
        Supply supply = count(things().has("Section", "built 3 Carrier, 3 Spotter, 2 Officer", "left 2 Spotter"));
        assertEquals(Map.of("Carrier", 3, "Spotter", 2, "Officer", 1), pieces(supply));
        assertEquals(List.of("shelf.beyond-contents", "shelf.beyond-contents", "shelf.beyond-contents"),
                supply.findings().stream().map(Finding::code).toList());
        assertEquals(List.of("Shelf#1#1", "Shelf#1#1", "Shelf#1#2"),
                supply.findings().stream().map(found -> found.at().text()).toList());
        assertEquals("It says that 3 of Spotter were built, but 1 of Section can account for 2 at the most; so many are "
                + "counted.", supply.findings().get(0).message());
    }

    @Test
    void guessesCountAndAreSaidUnknownOnesDoNotCount() {
        Things shelf = things().has("2 Spotter").has("guessed 3 Spotter").has("unknown 9 Spotter");
        Turnout turnout = shelf.depot().turnout(List.of(need("A", 4, "Spotter")), CancelToken.NEVER);
        assertTrue(turnout.complete());
        assertEquals(List.of(new Guess(id("Spotter"), 2)), turnout.guesses());
        assertEquals(List.of(), shelf.depot().turnout(List.of(need("A", 2, "Spotter")), CancelToken.NEVER).guesses());
        Turnout more = shelf.depot().turnout(List.of(need("A", 6, "Spotter")), CancelToken.NEVER);
        assertEquals(1, more.lacking());
        Reason.Source source = ((Reason.Block) more.reasons().get(0)).from().get(0);
        assertEquals(List.of(5, 9), List.of(source.pieces(), source.perhaps()));
    }

    @Test
    void aBoxOfAnUncertainPrintingHoldsForSureWhatAllOfThemHold() {
        Things box = things().box("Old", List.of(), List.of(
                Things.printing("Second", Validity.of(new Reach(Optional.of(new OnDate(LocalDate.of(2031, 6, 1))),
                        Optional.empty())), "3 Frame")), "2 Frame", "Officer");
        Supply open = count(box.has(contents("Old").get(0), Optional.empty(), Optional.empty(), Optional.empty()));
        assertEquals(2, frames(open));
        assertEquals(List.of(new Stack(id("Frame"), 0, 0, 1), new Stack(id("Officer"), 0, 0, 1)), open.stacks());
    }

    @Test
    void aPrintingThatIsSaidOrThatWasNotOutYetSettlesIt() {
        Validity june = Validity.of(new Reach(Optional.of(new OnDate(LocalDate.of(2031, 6, 1))), Optional.empty()));
        Things early = things().box("Old", List.of(), List.of(Things.printing("Second", june, "3 Frame")),
                "2 Frame", "Officer");
        Supply bought = count(early.has(contents("Old").get(0), Optional.empty(), Optional.empty(),
                Optional.of(LocalDate.of(2031, 5, 1))));
        assertEquals(Map.of("Officer", 1), pieces(bought));
        Things said = things().box("Old", List.of(), List.of(Things.printing("Second", june, "3 Frame")),
                "2 Frame", "Officer");
        Supply second = count(said.has(contents("Old").get(0), Optional.empty(), Optional.of(id("Second")),
                Optional.empty()));
        assertEquals(Map.of(), pieces(second));
        assertEquals(3, frames(second));
    }

    @Test
    void aBoxInItselfIsOpenedOnce() {
        Supply supply = count(new Things().piece("Officer", null).box("Loop", "Officer", "Loop").has("Loop"));
        assertEquals(Map.of("Officer", 1), pieces(supply));
    }

    @Test
    void shelvesAddUp() {
        Supply one = count(things().has("2 Frame").has("Officer"));
        Supply both = one.plus(count(things().has("Frame").has("2 Officer")));
        assertEquals(Map.of("Officer", 3), pieces(both));
        assertEquals(3, frames(both));
        assertEquals(Id.of("Range/Officer"), both.stacks().get(0).what());
    }

    @Test
    void aHoldingOfAMillionBoxesIsCountedAndStopsThere() {
        Supply supply = count(things().has("1000000 Bundle"));
        assertEquals(Map.of("Officer", 1_000_000), pieces(supply));
    }
}
