package org.cantonment.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.references.turnout.Parade;
import org.cantonment.references.turnout.ParadeFlow;
import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;

/**
 * Who stands where of 5,000 pieces for 2,000 needs: the whole answer from the records, truest and with its proof, beside
 * JGraphT's push-relabel with the making of its graph; and the greatest flow alone, beside it with its graph ready made. The
 * time is that of the processor, so that whatever else runs meanwhile does not count.
 */
final class Turnouts {
    private static final int WARM = 8;
    private static final int SEEDS = 25;
    private static final double ALLOWED = 60;

    private Turnouts() {
    }

    static List<Row> run() {
        List<Long> whole = new ArrayList<>();
        List<Long> flow = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        List<Long> flowReference = new ArrayList<>();
        for (int i = 0; i < WARM + SEEDS; i++) {
            Parade parade = Parade.draw(5_000, 2_000, 21, i);
            long start = now();
            Turnout turnout = Depot.of(parade.catalogue(), parade.supply(), parade.allowance())
                    .turnout(parade.needs(), CancelToken.NEVER);
            long answered = now();
            int alone = flow(parade);
            long flowed = now();
            ParadeFlow graph = new ParadeFlow(parade);
            long made = now();
            int filled = graph.filled();
            long end = now();
            if (turnout.filled() != filled || alone != filled || !turnout.proven() || !turnout.truest()) {
                throw new IllegalStateException("Of " + filled + " places " + turnout.filled() + " and " + alone + " are filled");
            }
            if (i >= WARM) {
                whole.add(answered - start);
                flow.add(flowed - answered);
                reference.add(end - flowed);
                flowReference.add(end - made);
            }
        }
        String what = "turnout, 5000 pieces, 2000 needs, ";
        Row median = Row.at(0.5, what + "all of it, ms", whole, reference);
        return List.of(new Row(what + "all of it, ms (60 allowed)", median.ours(), ALLOWED), median,
                Row.at(0.95, what + "slowest, ms", whole, reference), Row.at(0.5, what + "flow alone, ms", flow, flowReference));
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static int flow(Parade parade) {
        int types = parade.there().length;
        MinCostFlow flow = new MinCostFlow(2 + types + parade.arcs().length);
        for (int t = 0; t < types; t++) {
            flow.arc(0, 2 + t, parade.there()[t], 0);
        }
        for (int n = 0; n < parade.arcs().length; n++) {
            int count = parade.needs().get(n).count();
            flow.arc(2 + types + n, 1, count, 0);
            for (int t : parade.arcs()[n]) {
                flow.arc(2 + t, 2 + types + n, count, 0);
            }
        }
        return flow.run(0, 1);
    }
}
