package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/**
 * Goes on from values of least cost to those that are preferred: one search for each tier, with a row that keeps to what has
 * been reached, then one for each column of the order. It does so much work and no more; what it has by then stands.
 */
final class Ties {

    /** Exchanges times the size of the table. */
    private static final long WORK = 25_000_000;

    private final List<long[]> tiers;
    private final int[] order;
    private final CancelToken cancel;
    private final Outcome begun;
    private long[] best;
    private long nodes;
    private long pivots;
    private long left;
    private boolean settled = true;

    Ties(Reduction.Part part, int[] order, Outcome begun, CancelToken cancel) {
        this.tiers = part.tiers();
        this.order = order;
        this.begun = begun;
        this.cancel = cancel;
        best = begun.values();
        long size = (long) (part.programme().rows().size() + 4) * (part.programme().columns().size() + 1);
        left = Math.max(100, WORK / size);
    }

    Outcome settle(Search search) {
        Programme programme = search.narrowed(begun.cost());
        programme = keeping(programme, begun.cost());
        for (long[] tier : tiers) {
            if (settled && free(programme)) {
                Programme asked = costing(programme, tier);
                programme = keeping(asked, improve(asked));
            }
        }
        for (int column : order) {
            if (settled && programme.columns().get(column).lower() < programme.columns().get(column).upper()) {
                long[] costs = new long[best.length];
                costs[column] = -1;
                improve(costing(programme, costs));
                programme = fixing(programme, column, best[column]);
            }
        }
        return new Outcome(begun.state(), best, begun.cost(), begun.bound(), begun.nodes() + nodes,
                begun.pivots() + pivots, settled);
    }

    private static boolean free(Programme programme) {
        return programme.columns().stream().anyMatch(column -> column.lower() < column.upper());
    }

    private long improve(Programme programme) {
        Search search = new Search(programme, best, Search.Mode.PLAIN, new Limits(Math.max(1, left), 20_000), cancel, Progress.SILENT);
        Outcome outcome = search.run();
        settled &= outcome.state() == Outcome.State.PROVEN;
        nodes += outcome.nodes();
        pivots += outcome.pivots();
        left -= outcome.pivots();
        best = outcome.values();
        return outcome.cost();
    }

    private static Programme costing(Programme programme, long[] costs) {
        List<Column> columns = new ArrayList<>();
        for (int j = 0; j < costs.length; j++) {
            Column column = programme.columns().get(j);
            columns.add(new Column(column.name(), costs[j], column.lower(), column.upper(), column.rank()));
        }
        return new Programme(columns, programme.rows());
    }

    /** The programme with a row more: its cost goes no higher. */
    private static Programme keeping(Programme programme, long most) {
        int[] costly = IntStream.range(0, programme.columns().size())
                .filter(j -> programme.columns().get(j).cost() != 0).toArray();
        if (costly.length == 0) {
            return programme;
        }
        long[] factors = Arrays.stream(costly).mapToLong(j -> -programme.columns().get(j).cost()).toArray();
        List<Row> rows = new ArrayList<>(programme.rows());
        rows.add(new Row(costly, factors, -most));
        return new Programme(programme.columns(), rows);
    }

    private static Programme fixing(Programme programme, int j, long value) {
        List<Column> columns = new ArrayList<>(programme.columns());
        Column column = columns.get(j);
        columns.set(j, new Column(column.name(), column.cost(), value, value, column.rank()));
        return new Programme(columns, programme.rows());
    }
}
