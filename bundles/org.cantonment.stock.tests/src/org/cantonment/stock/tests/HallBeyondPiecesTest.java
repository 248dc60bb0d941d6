package org.cantonment.stock.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/**
 * Blocks where handfuls, caps, shares and conversions count, too: by the theorem of Hall (P. Hall, On Representatives of
 * Subsets, 1935) a block is a reason only if its needs, asked for alone, cannot have more than it says there is. That is
 * looked up by trying every way there is.
 */
class HallBeyondPiecesTest {

    private static final int CASES = 1200;

    @Test
    void noBlockCouldBeFilledBeyondWhatItSaysIsThere() {
        int blocks = 0;
        int exact = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Case of = new Case(new Random(seed), false, 4);
            List<Requirement> asked = of.asked();
            Turnout turnout = of.depot().turnout(asked, CancelToken.NEVER);
            String about = "case " + seed + ": " + of;
            Set<Requirement> named = new HashSet<>();
            for (Reason reason : turnout.reasons()) {
                if (reason instanceof Reason.Block block) {
                    block.needs().forEach(need -> assertTrue(named.add(need), about));
                    assertEquals(block.needs().stream().mapToInt(Requirement::count).sum(), block.needed(), about);
                    assertEquals(block.from().stream().mapToInt(Reason.Source::pieces).sum(), block.there(), about);
                    long most = alone(seed, asked, block);
                    assertTrue(most <= block.there(), about + " can fill " + most + " of " + block);
                    exact += most == block.there() ? 1 : 0;
                    blocks++;
                }
            }
            assertEquals(turnout.lacking(), turnout.reasons().stream().mapToInt(Reason::lacking).sum(), about);
        }
        assertTrue(blocks > CASES / 4 && exact > blocks / 2, blocks + " blocks, " + exact + " filled as far as they say");
    }

    private static long alone(int seed, List<Requirement> asked, Reason.Block block) {
        Case of = new Case(new Random(seed), false, 4);
        for (int n = asked.size() - 1; n >= 0; n--) {
            if (!block.needs().contains(asked.get(n))) {
                of.needs.remove(n);
            }
        }
        return new Enumeration(of).best()[0];
    }
}
