package org.cantonment.buying.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.junit.jupiter.api.Test;

class SolverTest {

    static Outcome solve(Programme programme) {
        return Solver.solve(programme, Limits.WIDE, CancelToken.NEVER, Progress.SILENT);
    }

    @Test
    void findsWhatTryingAllValuesFinds() {
        int impossible = 0;
        for (long seed = 0; seed < 4000; seed++) {
            Programme programme = Programmes.small(seed);
            long least = tryAll(programme, new long[programme.columns().size()], 0);
            Outcome outcome = solve(programme);
            if (least == Long.MAX_VALUE) {
                impossible++;
                assertEquals(Outcome.State.IMPOSSIBLE, outcome.state(), "seed " + seed);
            } else {
                assertEquals(Outcome.State.PROVEN, outcome.state(), "seed " + seed);
                assertEquals(least, outcome.cost(), "seed " + seed);
                assertEquals(least, outcome.bound(), "seed " + seed);
                assertTrue(programme.holds(outcome.values()), "seed " + seed);
            }
        }
        assertTrue(impossible > 400 && impossible < 3600, "both kinds are tried: " + impossible);
    }

    private static long tryAll(Programme programme, long[] values, int j) {
        if (j == values.length) {
            return programme.holds(values) ? programme.cost(values) : Long.MAX_VALUE;
        }
        long least = Long.MAX_VALUE;
        for (long v = programme.columns().get(j).lower(); v <= programme.columns().get(j).upper(); v++) {
            values[j] = v;
            least = Math.min(least, tryAll(programme, values, j + 1));
        }
        return least;
    }

    /** The Frobenius example of number theory for packs of 6, 9 and 20. */
    @Test
    void packsOfSixNineAndTwentyMissTheKnownCounts() {
        List<Integer> missed = new ArrayList<>();
        for (int count = 1; count <= 120; count++) {
            ProgrammeMaker maker = new ProgrammeMaker();
            Sum sum = new Sum();
            for (int pack : new int[] {6, 9, 20}) {
                sum.add(pack, maker.column("pack of " + pack, pack, 0, 30, 0));
            }
            maker.atLeast(sum, count);
            Outcome outcome = solve(maker.make());
            if (outcome.cost() > count) {
                missed.add(count);
            }
        }
        assertEquals(List.of(1, 2, 3, 4, 5, 7, 8, 10, 11, 13, 14, 16, 17, 19, 22, 23, 25, 28, 31, 34, 37, 43), missed);
    }
}
