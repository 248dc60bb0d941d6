package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/**
 * Goes on from values of least cost to those that are preferred: one tier after another becomes the cost, with a row that
 * keeps to what has been reached, and each such programme is reduced and searched like any other; then the columns of the
 * order, as many at once as are at their least. It does so much work and no more; what it has by then stands.
 */
final class Ties {

    private static final long WORK = 2_400_000_000L;

    private final CancelToken cancel;
    private final Budget budget;
    private boolean settled = true;

    private Ties(Budget budget, CancelToken cancel) {
        this.budget = budget;
        this.cancel = cancel;
    }

    /** Goes on from values that are proven to cost least. */
    static Outcome settle(Programme programme, Preference preference, Reduction reduction, Outcome least,
            CancelToken cancel) {
        Ties ties = new Ties(new Budget(WORK), cancel);
        long[] values = ties.settle(programme, preference, reduction, least.values());
        return new Outcome(Outcome.State.PROVEN, values, least.cost(), least.bound(), least.nodes(), least.pivots(),
                ties.settled);
    }

    /** Values that lie outside of what the reduction has left stay as they are. */
    private long[] settle(Programme programme, Preference preference, Reduction reduction, long[] least) {
        List<long[]> starts = new ArrayList<>();
        for (Reduction.Part part : reduction.parts()) {
            starts.add(IntStream.of(part.columns()).mapToLong(j -> least[j]).toArray());
        }
        long[] start = reduction.whole(starts);
        if (!programme.holds(start) || programme.cost(start) != programme.cost(least)) {
            settled = false;
            return least;
        }
        List<long[]> values = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            Reduction.Part part = reduction.parts().get(i);
            values.add(prefer(part.programme(), preference.of(part.columns()), starts.get(i)));
        }
        return reduction.whole(values);
    }

    /** Of the values that cost as little as these, those that are preferred. */
    private long[] prefer(Programme part, Preference preference, long[] start) {
        boolean minds = IntStream.range(0, start.length).anyMatch(j ->
                preference.tiers().stream().anyMatch(tier -> tier[j] != 0)) || preference.first().length > 0;
        settled &= !minds || !cancel.cancelled();
        if (!minds || !settled) {
            return start;
        }
        Search first = new Search(part, start, Search.Mode.CUTTING, limits(part), cancel, Progress.SILENT);
        budget.spend(part, first.root().pivots());
        Programme keeping = keeping(first.narrowed(part.cost(start)), part.cost(start));
        if (preference.tiers().isEmpty()) {
            return inOrder(keeping, preference.first(), start);
        }
        return least(costing(keeping, preference.tiers().get(0)), preference.rest(), start);
    }

    private Limits limits(Programme programme) {
        return new Limits(Math.max(1, budget.pivots(programme)), 20_000);
    }

    private long[] least(Programme asked, Preference then, long[] start) {
        Reduction reduction = Reduction.of(asked, then, cancel);
        if (reduction.impossible()) {
            settled = false;
            return start;
        }
        List<long[]> found = new ArrayList<>();
        for (Reduction.Part part : reduction.parts()) {
            long[] from = IntStream.of(part.columns()).mapToLong(j -> start[j]).toArray();
            Outcome outcome = Solver.search(part.programme(), part.programme().holds(from) ? from : null, Search.Mode.CUTTING,
                    limits(part.programme()), cancel, Progress.SILENT);
            budget.spend(part.programme(), outcome.pivots() + outcome.nodes());
            settled &= outcome.state() == Outcome.State.PROVEN;
            if (!outcome.found()) {
                settled = false;
                return start;
            }
            found.add(outcome.values());
        }
        long[] values = reduction.whole(found);
        if (!asked.holds(values) || asked.cost(values) > asked.cost(start)) {
            settled = false;
            return start;
        }
        return settled ? settle(asked, then, reduction, values) : values;
    }

    /**
     * As much as can be of the first column, then of the next. Columns that are at their least come together up to the first
     * that is not: if not one of them can be greater, nor that one, they are all known at once.
     */
    private long[] inOrder(Programme part, int[] order, long[] start) {
        Programme programme = part;
        long[] values = start;
        int next = 0;
        while (settled && next < order.length) {
            int to = next;
            while (to < order.length - 1 && values[order[to]] == programme.columns().get(order[to]).lower()) {
                to++;
            }
            long[] costs = new long[start.length];
            long over = values[order[to]] - programme.columns().get(order[to]).lower() + 1;
            boolean open = width(programme, order[to]) > over;
            costs[order[to]] = -1;
            for (int k = next; k < to; k++) {
                costs[order[k]] = -over;
                open |= width(programme, order[k]) > 1;
            }
            long[] better = open ? least(costing(programme, costs), Preference.NONE, values) : values;
            if (!preferred(better, values, order, next, to)) {
                programme = fixing(programme, order, next, to + 1, values);
                next = to + 1;
            } else {
                values = better;
            }
        }
        return values;
    }

    private static boolean preferred(long[] one, long[] other, int[] order, int from, int to) {
        for (int k = from; k <= to; k++) {
            if (one[order[k]] != other[order[k]]) {
                return one[order[k]] > other[order[k]];
            }
        }
        return false;
    }

    private static long width(Programme programme, int j) {
        return programme.columns().get(j).upper() - programme.columns().get(j).lower() + 1;
    }

    private static Programme costing(Programme programme, long[] costs) {
        List<Column> columns = new ArrayList<>();
        for (int j = 0; j < costs.length; j++) {
            Column column = programme.columns().get(j);
            columns.add(new Column(column.name(), costs[j], column.lower(), column.upper(), column.rank()));
        }
        return new Programme(columns, programme.rows());
    }

    /** The programme with two rows more: its cost is what it is known to be at the least. */
    private static Programme keeping(Programme programme, long cost) {
        int[] costly = IntStream.range(0, programme.columns().size())
                .filter(j -> programme.columns().get(j).cost() != 0).toArray();
        if (costly.length == 0) {
            return programme;
        }
        long[] factors = IntStream.of(costly).mapToLong(j -> -programme.columns().get(j).cost()).toArray();
        List<Row> rows = new ArrayList<>(programme.rows());
        rows.add(new Row(costly, factors, -cost));
        rows.add(new Row(costly, IntStream.of(costly).mapToLong(j -> programme.columns().get(j).cost()).toArray(), cost));
        return new Programme(programme.columns(), rows);
    }

    private static Programme fixing(Programme programme, int[] order, int from, int to, long[] values) {
        List<Column> columns = new ArrayList<>(programme.columns());
        for (int k = from; k < to; k++) {
            columns.set(order[k], columns.get(order[k]).within(values[order[k]], values[order[k]]));
        }
        return new Programme(columns, programme.rows());
    }
}
