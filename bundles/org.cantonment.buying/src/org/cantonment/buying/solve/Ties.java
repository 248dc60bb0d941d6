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
    private static final long WORK = 40_000_000;

    private final CancelToken cancel;
    private final long cost;
    private long[] best;
    private long nodes;
    private long pivots;
    private long left;
    private boolean settled = true;

    private Ties(Programme part, long[] start, CancelToken cancel) {
        this.cancel = cancel;
        best = start;
        cost = part.cost(start);
        long size = (long) (part.rows().size() + 4) * (part.columns().size() + 1);
        left = Math.max(100, WORK / size);
    }

    /** Goes on from values that are proven to cost least. */
    static Outcome settle(Programme programme, Preference preference, Outcome least, CancelToken cancel) {
        Reduction reduction = Reduction.byRows(programme);
        long[] values = reduction.fixed().clone();
        long nodes = least.nodes();
        long pivots = least.pivots();
        boolean settled = true;
        for (Reduction.Part part : reduction.parts()) {
            long[] start = Arrays.stream(part.columns()).mapToLong(j -> least.values()[j]).toArray();
            Ties ties = new Ties(part.programme(), start, cancel);
            ties.settle(part.programme(), preference.tiers(part.columns()), preference.order(part.columns()));
            for (int k = 0; k < start.length; k++) {
                values[part.columns()[k]] = ties.best[k];
            }
            nodes += ties.nodes;
            pivots += ties.pivots;
            settled &= ties.settled;
        }
        return new Outcome(Outcome.State.PROVEN, values, least.cost(), least.bound(), nodes, pivots, settled);
    }

    private void settle(Programme part, List<long[]> tiers, int[] order) {
        Search first = new Search(part, best, Search.Mode.CUTTING, new Limits(left, 2), cancel, Progress.SILENT);
        long rooted = first.root().pivots();
        pivots += rooted;
        left -= rooted / 2;
        Programme programme = keeping(first.narrowed(cost), cost);
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
