package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.cap;
import static org.cantonment.stock.tests.Things.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** Parts that build handfuls: counted in frames where no count of pieces can tell. Numbers solved by hand. */
class HandfulsTest {

    private static final Requirement SPOTTERS = need("Spotters", 3, "Spotter");
    private static final Requirement CARRIER = need("Carrier", 1, "Carrier");

    private static Things frames(int count) {
        return new Things().piece("Spotter", null).piece("Carrier", null)
                .part("Frame", "2 Spotter", "3 Carrier").has(count + " Frame");
    }

    private static Turnout ask(Things things, Requirement... needs) {
        return things.depot().turnout(List.of(needs), CancelToken.NEVER);
    }

    @Test
    void everySetOfNeedsCountsAsServedAndYetItCannotBeDone() {
        assertTrue(ask(frames(2), SPOTTERS).complete());
        assertTrue(ask(frames(2), CARRIER).complete());
        Turnout turnout = ask(frames(2), SPOTTERS, CARRIER);
        assertEquals(3, turnout.filled());
        assertTrue(turnout.proven() && turnout.truest());
        assertEquals(1, turnout.reasons().size());
        Reason.InFrames reason = (Reason.InFrames) turnout.reasons().get(0);
        assertEquals(List.of(2, 1), reason.portions().stream().map(Reason.Portion::frames).toList());
        assertEquals(3, reason.framesNeeded());
        assertEquals(2, reason.frames());
        assertEquals(1, reason.lacking());
    }

    @Test
    void oneFrameMoreMendsIt() {
        Turnout turnout = ask(frames(3), SPOTTERS, CARRIER);
        assertTrue(turnout.complete());
        assertEquals(List.of(2, 1), turnout.builds().stream().map(Build::frames).toList());
    }

    @Test
    void oneSpotterAlreadyBuiltMendsItToo() {
        Turnout turnout = ask(frames(2).has("Spotter"), SPOTTERS, CARRIER);
        assertTrue(turnout.complete());
        assertEquals(2, turnout.builds().stream().mapToInt(Build::frames).sum());
    }

    @Test
    void nothingIsBuiltForWhatStandsThereAlready() {
        Turnout turnout = ask(frames(2).has("3 Spotter").has("Carrier"), SPOTTERS, CARRIER);
        assertTrue(turnout.complete());
        assertEquals(List.of(), turnout.builds());
    }

    @Test
    void aCapHoldsOverTheWholeBoxAndOverEachBoxApart() {
        Things one = new Things().piece("Man", null).piece("Leader", null).part("Body", "Man", "Leader")
                .box("Section", List.of(cap(1, "Leader")), List.of(), "5 Body").has("2 Section");
        assertTrue(ask(one, need("A", 2, "Leader"), need("B", 8, "Man")).complete());
        Turnout three = ask(one, need("A", 3, "Leader"));
        assertEquals(1, three.lacking());
        Reason.Block block = (Reason.Block) three.reasons().get(0);
        assertEquals(2, block.there());
        assertTrue(block.from().stream().allMatch(from -> from.kind() == Reason.Kind.CAPPED), block.toString());
        Things pairs = new Things().piece("Man", null).piece("Leader", null).part("Pair", "2 Man", "2 Leader")
                .box("Section", List.of(cap(3, "Leader")), List.of(), "3 Pair").has("2 Section");
        // Three leaders a box, but they come in twos: two a box, four in all and not six.
        assertEquals(4, ask(pairs, need("A", 6, "Leader")).filled());
    }

    @Test
    void whatIsLooseStandsAsOneThingOrAsAnother() {
        Things loose = new Things().piece("Car", null).piece("Pike", null)
                .part("Hull", Fixing.LOOSE_BETWEEN_GAMES, "Car", "Pike").has("3 Hull", "built 3 Car");
        Turnout as = ask(loose, need("Cars", 3, "Car"));
        assertTrue(as.complete());
        assertEquals(List.of(), as.builds());
        Turnout other = ask(loose, need("Cars", 1, "Car"), need("Pikes", 2, "Pike"));
        assertTrue(other.complete());
        assertEquals(1, other.builds().size());
        assertEquals(2, other.builds().get(0).frames());
        assertTrue(other.builds().get(0).rebuilt());
        assertEquals(1, ask(loose, need("Cars", 2, "Car"), need("Pikes", 2, "Pike")).lacking());
    }

    @Test
    void whatIsGluedStaysWhatItIs() {
        Things glued = new Things().piece("Car", null).piece("Pike", null).part("Hull", "Car", "Pike")
                .has("3 Hull", "built 2 Car");
        assertEquals(1, ask(glued, need("Pikes", 2, "Pike")).lacking());
        assertTrue(ask(glued, need("Cars", 2, "Car"), need("Pikes", 1, "Pike")).complete());
    }

    @Test
    void largeNumbersOfSimpleFramesNeedNoSearch() {
        Things many = new Things().piece("A", null).piece("B", null).piece("C", null).part("Body", "A", "B", "C")
                .has("900000 Body");
        Turnout turnout = ask(many, need("One", 400_000, "A"), need("Two", 400_000, "B"), need("Three", 200_000, "C"));
        assertEquals(100_000, turnout.lacking());
        assertTrue(turnout.proven());
    }
}
