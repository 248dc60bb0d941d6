package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** What is said of a search that did not come to its end. */
class CutOffTest {

    /** Frames that give seven of one or five of two or three of three, in several kinds that overlap. */
    private static Things tangle() {
        Things things = new Things();
        for (int t = 0; t < 6; t++) {
            things.piece("T" + t, null);
        }
        for (int p = 0; p < 5; p++) {
            things.part("P" + p, "7 T" + p, "5 T" + (p + 1), "3 T" + (p + 2) % 6 + " + 2 T" + p).has("9 P" + p);
        }
        return things;
    }

    private static List<Requirement> needs() {
        List<Requirement> needs = new ArrayList<>();
        for (int t = 0; t < 6; t++) {
            needs.add(need("N" + t, 41 + t, "T" + t));
        }
        return needs;
    }

    @Test
    void theBoundIsStatedAndNothingIsCalledProven() {
        Turnout turnout = tangle().depot().turnout(needs(), 2, CancelToken.NEVER);
        assertTrue(turnout.filled() < turnout.bound(), turnout.filled() + " of " + turnout.bound());
        assertFalse(turnout.proven());
        assertFalse(turnout.truest());
        assertTrue(turnout.bound() <= turnout.needed());
        Reason.Searched reason = assertInstanceOf(Reason.Searched.class,
                turnout.reasons().get(turnout.reasons().size() - 1));
        assertFalse(reason.proven());
        assertEquals(turnout.lacking(), turnout.reasons().stream().mapToInt(Reason::lacking).sum());
        Depot.Look look = tangle().depot().look(needs(), 2, CancelToken.NEVER);
        assertFalse(look.enough() || look.decided());
    }

    @Test
    void moreBranchesNeverMakeItWorse() {
        int filled = 0;
        int bound = Integer.MAX_VALUE;
        for (int branches : new int[] {1, 4, 16, 64, 256}) {
            Turnout turnout = tangle().depot().turnout(needs(), branches, CancelToken.NEVER);
            assertTrue(turnout.filled() >= filled && turnout.bound() <= bound, branches + " branches");
            filled = turnout.filled();
            bound = turnout.bound();
        }
    }

    @Test
    void onSmallCasesWhatIsFoundAndTheBoundHoldTheTruthBetweenThem() {
        Random random = new Random(3);
        for (int i = 0; i < 300; i++) {
            Case of = new Case(random, false, 3);
            Turnout cut = of.depot().turnout(of.asked(), 1, CancelToken.NEVER);
            int most = of.depot().turnout(of.asked(), CancelToken.NEVER).filled();
            assertTrue(cut.filled() <= most && most <= cut.bound(), of.toString());
        }
    }

    @Test
    void whoeverNoLongerWantsItIsObeyed() {
        AtomicInteger asked = new AtomicInteger();
        Depot depot = tangle().depot();
        assertThrows(Cancelled.class, () -> depot.turnout(needs(), () -> asked.incrementAndGet() > 3));
        assertEquals(4, asked.get());
        assertEquals(Set.of(), depot.lacking(List.of(), CancelToken.NEVER));
    }
}
