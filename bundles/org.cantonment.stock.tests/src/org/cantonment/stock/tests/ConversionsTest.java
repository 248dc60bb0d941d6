package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Things.turns;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Fact;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Gluing;
import org.cantonment.stock.turnout.Guess;
import org.cantonment.stock.turnout.Task;
import org.cantonment.stock.turnout.Together;
import org.cantonment.stock.turnout.Turnout;
import org.cantonment.stock.turnout.Worked;
import org.junit.jupiter.api.Test;

/** What is built only to be worked over, reckoned by hand: a frame is two spotters, two wheels left, or three carriers. */
class ConversionsTest {

    private static final Fact RATE = turns("2 Spotter", "1 Officer", OptionalInt.of(2));

    private static Things things() {
        return things(Fixing.GLUED);
    }

    private static Things things(Fixing fixing) {
        return new Things().piece("Spotter", null).piece("Carrier", null).piece("Officer", null).bits("Wheels")
                .part("Frame", fixing, "2 Spotter leaves 2 Wheels", "3 Carrier");
    }

    private static Turnout ask(Things things, Fact fact, Requirement... needs) {
        return things.depot(fact).turnout(List.of(needs), CancelToken.NEVER);
    }

    private static void assertBuilt(int frames, int way, Turnout turnout) {
        assertEquals(frames, turnout.builds().stream().filter(build -> build.build().equals(id("Frame").line(way)))
                .mapToInt(build -> build.frames()).sum(), turnout.toString());
    }

    @Test
    void aFrameIsBuiltToBeWorkedOver() {
        Turnout turnout = ask(things().has("Frame"), RATE, need("A", 1, "Officer"));
        assertTrue(turnout.complete() && turnout.proven() && turnout.truest());
        assertBuilt(1, 1, turnout);
        Worked worked = turnout.worked().get(0);
        assertEquals(1, worked.times());
        assertEquals(Map.of(id("Spotter"), 2), worked.built());
        assertEquals(1, turnout.standing(Truth.CONVERSION));
    }

    @Test
    void theRateAndTheCapAreKept() {
        // Five frames are ten spotters, five officers at that rate; only two may be made.
        Turnout capped = ask(things().has("5 Frame"), RATE, need("A", 5, "Officer"));
        assertEquals(2, capped.filled());
        assertBuilt(2, 1, capped);
        assertEquals("[Short(3)]", capped.reasons().stream().map(one -> "Short(" + one.lacking() + ")").toList().toString());
        // Without a cap three spotters ready and one frame make two officers, and one spotter is over.
        Turnout free = ask(things().has("3 Spotter").has("Frame"), turns("2 Spotter", "1 Officer", OptionalInt.empty()),
                need("A", 3, "Officer"), need("B", 1, "Spotter"));
        assertEquals(3, free.filled());
        assertTrue(free.proven());
    }

    @Test
    void aFrameServesOnlyOnce() {
        // Two frames: three carriers and one officer; or two officers and no carrier.
        Turnout both = ask(things().has("2 Frame"), RATE, need("A", 1, "Officer"), need("B", 3, "Carrier"));
        assertTrue(both.complete());
        assertBuilt(1, 1, both);
        assertBuilt(1, 2, both);
        Turnout torn = ask(things().has("2 Frame"), RATE, need("A", 2, "Officer"), need("B", 3, "Carrier"));
        assertEquals(4, torn.filled());
        assertTrue(torn.proven());
        assertEquals(1, torn.reasons().stream().mapToInt(one -> one.lacking()).sum());
    }

    @Test
    void bitsAreLeftBesideWhatIsBuilt() {
        Fact wheels = turns("Spotter and 2 Wheels", "1 Officer", OptionalInt.empty());
        // One frame: a spotter stands, the other becomes an officer with the wheels.
        Turnout turnout = ask(things().has("Frame"), wheels, need("A", 1, "Officer"), need("B", 1, "Spotter"));
        assertTrue(turnout.complete());
        assertEquals(Map.of(id("Spotter"), 1, id("Wheels"), 2), turnout.worked().get(0).built());
        // Carriers leave no wheels, and wheels that nobody has are not there.
        assertEquals(3, ask(things().has("Frame").has("Spotter"), wheels, need("A", 1, "Officer"), need("B", 3, "Carrier"))
                .filled());
        assertEquals(4, ask(things().has("Frame").has("Spotter").has("2 Wheels"), wheels, need("A", 1, "Officer"),
                need("B", 3, "Carrier")).filled());
    }

    @Test
    void whatLiesReadyIsTakenBeforeAnythingIsBuilt() {
        Turnout turnout = ask(things().has("2 Spotter").has("Frame"), RATE, need("A", 1, "Officer"));
        assertTrue(turnout.builds().isEmpty());
        assertEquals(Map.of(), turnout.worked().get(0).built());
    }

    @Test
    void whatComesLooseBetweenGamesIsNotWorkedOver() {
        assertEquals(0, ask(things(Fixing.LOOSE_BETWEEN_GAMES).has("Frame"), RATE, need("A", 1, "Officer")).filled());
        assertEquals(1, ask(things(Fixing.LOOSE_AT_BENCH).has("Frame"), RATE, need("A", 1, "Officer")).filled());
    }

    @Test
    void aGuessThatIsWorkedOverIsTold() {
        Turnout turnout = ask(things().has("guessed 2 Spotter"), RATE, need("A", 1, "Officer"));
        assertEquals(List.of(new Guess(id("Spotter"), 2)), turnout.guesses());
    }

    @Test
    void oneChoiceOfWhatIsGluedCountsWhatIsWorkedOver() {
        Things things = things().has("2 Frame");
        Allowance allowance = Allowance.of(things.catalogue(), List.of(Things.card(RATE)), Optional.empty(), Terms.ANY);
        Supply supply = Supply.of(things.catalogue(), List.of(things.shelf()));
        Task officer = new Task(id("One"), List.of(need("A", 1, "Officer")), allowance);
        Together serves = Gluing.of(things.catalogue(), supply,
                List.of(officer, new Task(id("Two"), List.of(need("B", 3, "Carrier")), allowance)), 100, CancelToken.NEVER);
        assertEquals(0, serves.lacking());
        assertEquals(2, serves.builds().size());
        // Six carriers take both frames, and then there is no officer: short by one, or by three.
        Together torn = Gluing.of(things.catalogue(), supply,
                List.of(officer, new Task(id("Two"), List.of(need("B", 6, "Carrier")), allowance)), 100, CancelToken.NEVER);
        assertEquals(1, torn.lacking());
        assertTrue(torn.proven());
    }
}
