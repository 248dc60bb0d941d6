package org.cantonment.rules.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What all needs together cost at the least. Each need has a price; an edit is worth what it gives to all needs, and where
 * that is more than it costs, it is taken as often as can be. The sum is a bound whatever the prices are, and is reckoned
 * in whole numbers.
 */
final class Bound {

    /** No change puts in more of one thing in one place. */
    static final int MOST_OF_ONE = 60;

    /** Units touched count so little beside points that they only decide between equals; no change touches half of this. */
    private static final long POINT = 1 << 12;
    private static final long FINE = 1 << 12;
    private static final double GREATEST_PRICE = 1e12;

    private final long[] reduced;
    private long sum;

    private Bound(State state, List<Edit> open, long[] deficits, long[][] effects) {
        double[] costs = new double[open.size()];
        double[] most = new double[costs.length];
        for (int e = 0; e < costs.length; e++) {
            Edit edit = open.get(e);
            costs[e] = cost(edit);
            most[e] = edit.endless() ? MOST_OF_ONE : state.spare(edit);
        }
        double[][] table = new double[deficits.length][costs.length];
        double[] lacking = new double[deficits.length];
        for (int n = 0; n < lacking.length; n++) {
            lacking[n] = deficits[n];
            for (int e = 0; e < costs.length; e++) {
                table[n][e] = effects[n][e];
            }
        }
        reduced = new long[costs.length];
        conclude(state, open, deficits, effects, new Simplex(costs, table, lacking, most).prices());
    }

    /** @param open all edits that may be done, in the order of the needs' effects */
    static Bound of(State state, List<Edit> open, List<Need> needs) {
        return new Bound(state, open, needs.stream().mapToLong(Need::deficit).toArray(),
                needs.stream().map(Need::all).toArray(long[][]::new));
    }

    /**
     * The same after one more edit, by what it leaves of the needs of the state before it: less is known then than once its
     * list was judged, but what is known holds. What can be put into a formation that it puts in counts with the edit itself.
     *
     * @param state after the edit
     * @param open all edits that might be done before it, in the order of the needs' effects
     * @param taken the number of the edit
     */
    static Bound after(State state, List<Edit> open, List<Need> needs, int taken) {
        int[] left = IntStream.range(0, open.size()).filter(e -> state.leaves(open.get(e))).toArray();
        long[] deficits = new long[needs.size()];
        long[][] effects = new long[deficits.length][left.length];
        for (int n = 0; n < deficits.length; n++) {
            long[] all = needs.get(n).all();
            deficits[n] = needs.get(n).deficit() - all[taken];
            for (int e = 0; e < left.length; e++) {
                effects[n][e] = all[left[e]];
            }
        }
        return new Bound(state, IntStream.of(left).mapToObj(open::get).toList(), deficits, effects);
    }

    private static long cost(Edit edit) {
        return Cost.moved(edit.least()) * POINT + Cost.units(edit.least());
    }

    private void conclude(State state, List<Edit> open, long[] deficits, long[][] effects, double[] prices) {
        for (int e = 0; e < reduced.length; e++) {
            reduced[e] = cost(open.get(e)) * FINE;
        }
        for (int n = 0; n < prices.length; n++) {
            long price = (long) (Math.min(GREATEST_PRICE, prices[n]) * FINE);
            sum += price * deficits[n];
            for (int e = 0; e < reduced.length && price > 0; e++) {
                reduced[e] -= price * effects[n][e];
            }
        }
        Map<Group, Long> best = new HashMap<>();
        for (int e = 0; e < reduced.length; e++) {
            Edit edit = open.get(e);
            if (reduced[e] < 0 && (edit.endless() || edit.kind() == Edit.Kind.UNPIN)) {
                sum += reduced[e] * (edit.endless() ? MOST_OF_ONE : 1);
            } else if (reduced[e] < 0) {
                best.merge(edit.group(), reduced[e], Math::min);
            }
        }
        best.forEach((group, worth) -> sum += worth * state.left(group));
    }

    /** What is still to come at the least, as a {@link Cost}. */
    long least() {
        return cost(sum);
    }

    /** The same if the edit of this number is among it. */
    long with(int edit) {
        return cost(sum + Math.max(0, reduced[edit]));
    }

    /** The same if both edits of these numbers are among it. */
    long with(int one, int other) {
        return cost(sum + Math.max(0, reduced[one]) + (one == other ? 0 : Math.max(0, reduced[other])));
    }

    private static long cost(long fine) {
        long whole = Math.max(0, (fine + FINE - 1) / FINE);
        boolean more = whole % POINT > POINT / 2;
        return Cost.of(whole / POINT + (more ? 1 : 0), more ? 0 : whole % POINT);
    }
}
