package org.cantonment.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.plan.Question;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.references.buying.Errands;

/** How soon a buying plan that is cancelled is back, whatever it was at, and how much heap plans take. */
final class BuyingLimits {
    private static final double MOST_TO_CANCEL = 50;
    private static final int MOST_HEAP = 512;
    private static final int MOMENTS = 24;

    private BuyingLimits() {
    }

    static List<Row> run() throws IOException {
        List<Row> rows = new ArrayList<>();
        rows.add(cancelled("500/300/6", Errands.large(500, 300, 6, 3).question(), 40));
        rows.add(cancelled("2000/1000/6", Errands.large(2_000, 1_000, 6, 2).question(), 4));
        double heap = Processes.within(MOST_HEAP, "buying-heap") / 1048576.0;
        rows.add(new Row("buying plans, heap in use at the most, MB (512 allowed)", heap, MOST_HEAP));
        return rows;
    }

    /** The longest that a whole plan still took after it was cancelled, at several moments, beside what is allowed. */
    private static Row cancelled(String name, Question question, int step) {
        double latest = 0;
        for (int moment = 0; moment < MOMENTS; moment++) {
            long due = System.nanoTime() + moment * step * 1_000_000L;
            Buying.plan(question, () -> System.nanoTime() > due);
            latest = Math.max(latest, (System.nanoTime() - due) / 1e6);
        }
        return new Row("plan " + name + " cancelled, longest until back, ms (50)", latest, MOST_TO_CANCEL);
    }

    /** The bytes in use at the most, with what was not collected yet, while each size of plan is made. */
    static long heap() {
        for (long seed = 0; seed < 3; seed++) {
            Buying.plan(Errands.large(200, 150, 3, seed).question(), CancelToken.NEVER);
            Buying.plan(Errands.large(500, 300, 6, seed + 1).question(), CancelToken.NEVER);
            Buying.plan(Errands.large(2_000, 1_000, 6, seed).question(), CancelToken.NEVER);
        }
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
    }
}
