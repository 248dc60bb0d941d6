package org.cantonment.benchmarks;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Reach;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.references.reach.Outlook;
import org.cantonment.references.reach.ReachModel;

/**
 * How many pieces a shelf is away from 60 formations in 3 eras, each at both strengths, to the proof; beside CP-SAT of OR-Tools,
 * which is asked the same formation by formation, and beside what is allowed.
 */
final class Reaches {
    private static final int FORMATIONS = 60;
    private static final int ERAS = 3;
    private static final int SEEDS = 5;
    private static final long ALLOWED = 1_000_000_000L;

    private Reaches() {
    }

    static List<Row> run() {
        ReachModel.load();
        ours(Outlook.draw(FORMATIONS, ERAS, 99));
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (long seed = 0; seed < SEEDS; seed++) {
            Outlook outlook = Outlook.draw(FORMATIONS, ERAS, seed);
            long begin = System.nanoTime();
            ours(outlook);
            long middle = System.nanoTime();
            outlook.asked().forEach(asked -> ReachModel.solve(outlook, asked));
            ours.add(middle - begin);
            reference.add(System.nanoTime() - middle);
        }
        String what = "reach, 60 formations in 3 eras, ";
        return List.of(Row.at(0.5, what + "ms (1000 allowed)", ours, List.of(ALLOWED)),
                Row.at(0.5, what + "and CP-SAT, ms", ours, reference),
                Row.at(0.95, what + "slowest, ms", ours, reference));
    }

    private static void ours(Outlook outlook) {
        Reach reach = new Reach(outlook.catalogue(), outlook.supply());
        for (Asked asked : outlook.asked()) {
            if (reach.near(asked, CancelToken.NEVER).filter(near -> !near.proven()).isPresent()) {
                throw new IllegalStateException("Not proven: " + asked.formation());
            }
        }
    }
}
