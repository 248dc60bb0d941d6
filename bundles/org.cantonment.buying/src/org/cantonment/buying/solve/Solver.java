package org.cantonment.buying.solve;

import java.util.Arrays;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/** Finds the values of least cost. Holds no state. */
public final class Solver {

    /** So few columns are searched with all that could be preferred at once. */
    private static final int FEW = 200;

    /** Exchanges spent on values to begin with. */
    private static final long HOPED = 20_000;

    private Solver() {
    }

    /** Least cost. Never throws when it is cancelled: it then says the best so far, and the bound. */
    public static Outcome solve(Programme programme, Limits limits, CancelToken cancel, Progress progress) {
        return solve(programme, Preference.NONE, limits, cancel, progress);
    }

    /**
     * Least cost, and among the values of least cost those that are preferred. The cost is proven first; then, from what was
     * found, the rest is sought among all values that could be preferred. Where a programme is much smaller for its cost
     * alone, as where the same can be bought sooner or later, its cost is sought there.
     */
    public static Outcome solve(Programme programme, Preference preference, Limits limits, CancelToken cancel,
            Progress progress) {
        Reduction keeping = Reduction.of(programme, preference, cancel);
        Reduction byCost = preference.isNone() ? keeping : Reduction.of(programme, Preference.NONE, cancel);
        boolean alike = keeping.columns() <= FEW || keeping.columns() * 4 <= byCost.columns() * 5;
        Outcome least = solve(programme, alike ? keeping : byCost, limits, cancel, progress);
        return least.state() == Outcome.State.PROVEN && !preference.isNone()
                ? Ties.settle(programme, preference, keeping, least, cancel) : least;
    }

    private static Outcome solve(Programme programme, Reduction reduction, Limits limits, CancelToken cancel,
            Progress progress) {
        if (reduction.impossible()) {
            return new Outcome(Outcome.State.IMPOSSIBLE, null, Long.MAX_VALUE, Long.MAX_VALUE, 0, 0, true);
        }
        Gathering all = new Gathering(programme, reduction);
        int parts = reduction.parts().size();
        for (int i = 0; i < parts && parts > 1 && !all.impossible(); i++) {
            Programme part = reduction.parts().get(i).programme();
            all.put(i, search(part, null, Search.Mode.FIRST, all.rest(limits), cancel, progress));
        }
        for (int i = 0; i < parts && !all.impossible(); i++) {
            Programme part = reduction.parts().get(i).programme();
            long[] start = hoped(part, all.start(i), all.rest(limits), cancel);
            all.put(i, search(part, start, Search.Mode.CUTTING, all.rest(limits), cancel, progress));
            progress.at(i + 1, parts, "searching");
        }
        return all.outcome();
    }

    /** A part that nobody wants any more may be as great as it was asked about: not even its table is made then. */
    static Outcome search(Programme part, long[] start, Search.Mode mode, Limits limits, CancelToken cancel,
            Progress progress) {
        return cancel.cancelled() ? Outcome.unsought(part, start)
                : new Search(part, start, mode, limits, cancel, progress).run();
    }

    /** The best values where each column is at its greatest value that mostly is best there; the other values if dearer. */
    private static long[] hoped(Programme part, long[] other, Limits limits, CancelToken cancel) {
        if (part.columns().stream().noneMatch(column -> column.rank() < 0)) {
            return other;
        }
        Programme fixed = new Programme(part.columns().stream()
                .map(column -> column.rank() < 0 ? column.within(column.upper(), column.upper()) : column).toList(), part.rows());
        Limits few = new Limits(Math.min(limits.pivots(), HOPED), limits.places());
        Outcome outcome = solve(fixed, few, cancel, Progress.SILENT);
        return outcome.found() && (other == null || outcome.cost() < part.cost(other)) ? outcome.values() : other;
    }

    /** What is left of a programme once it is reduced, in parts that share nothing: what the search itself works on. */
    public static List<Programme> reduced(Programme programme) {
        return Reduction.of(programme, Preference.NONE, CancelToken.NEVER).parts().stream().map(Reduction.Part::programme).toList();
    }

    /** What has been found of the parts. */
    private static final class Gathering {

        private final Programme programme;
        private final Reduction reduction;
        private final Outcome[] parts;
        private long nodes;
        private long pivots;

        Gathering(Programme programme, Reduction reduction) {
            this.programme = programme;
            this.reduction = reduction;
            parts = new Outcome[reduction.parts().size()];
        }

        void put(int i, Outcome outcome) {
            parts[i] = outcome;
            nodes += outcome.nodes();
            pivots += outcome.pivots();
        }

        Limits rest(Limits limits) {
            return new Limits(Math.max(0, limits.pivots() - pivots), limits.places());
        }

        long[] start(int i) {
            return parts[i] != null && parts[i].found() ? parts[i].values() : null;
        }

        boolean impossible() {
            return Arrays.stream(parts).anyMatch(part -> part != null && part.state() == Outcome.State.IMPOSSIBLE);
        }

        Outcome outcome() {
            if (impossible()) {
                return new Outcome(Outcome.State.IMPOSSIBLE, null, Long.MAX_VALUE, Long.MAX_VALUE, nodes, pivots, true);
            }
            long bound = bound();
            if (!Arrays.stream(parts).allMatch(Outcome::found)) {
                return new Outcome(Outcome.State.STOPPED, null, Long.MAX_VALUE, bound, nodes, pivots, true);
            }
            boolean proven = Arrays.stream(parts).allMatch(part -> part.state() == Outcome.State.PROVEN);
            long[] values = reduction.whole(Arrays.stream(parts).map(Outcome::values).toList());
            if (!programme.holds(values)) {
                throw new IllegalStateException("The values found do not hold in the programme asked about");
            }
            return new Outcome(proven ? Outcome.State.PROVEN : Outcome.State.STOPPED, values, programme.cost(values),
                    proven ? programme.cost(values) : bound, nodes, pivots,
                    Arrays.stream(parts).allMatch(Outcome::settled));
        }

        /** What is fixed costs what it costs; where nothing is known of a part, the cheaper bound of each column. */
        private long bound() {
            long sum = 0;
            boolean[] left = new boolean[programme.columns().size()];
            for (int i = 0; i < parts.length; i++) {
                Programme part = reduction.parts().get(i).programme();
                for (int j : reduction.parts().get(i).columns()) {
                    left[j] = true;
                }
                sum += Math.max(parts[i].bound(), floor(part));
            }
            for (int j = 0; j < left.length; j++) {
                sum += left[j] ? 0 : programme.columns().get(j).cost() * reduction.fixed()[j];
            }
            return sum;
        }

        private static long floor(Programme part) {
            return part.columns().stream().mapToLong(c -> c.cost() * (c.cost() > 0 ? c.lower() : c.upper())).sum();
        }
    }
}
