package org.cantonment.rules.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    /** @param open all edits that may be done, in the order of the needs' effects */
    Bound(State state, List<Edit> open, List<Need> needs) {
        double[] costs = new double[open.size()];
        double[] most = new double[costs.length];
        for (int e = 0; e < costs.length; e++) {
            Edit edit = open.get(e);
            costs[e] = cost(edit);
            most[e] = edit.endless() ? MOST_OF_ONE : state.spare(edit);
        }
        double[][] effects = new double[needs.size()][costs.length];
        double[] deficits = new double[needs.size()];
        for (int n = 0; n < deficits.length; n++) {
            deficits[n] = needs.get(n).deficit();
            for (int e = 0; e < costs.length; e++) {
                effects[n][e] = needs.get(n).all()[e];
            }
        }
        reduced = new long[costs.length];
        conclude(state, open, needs, new Simplex(costs, effects, deficits, most).prices());
    }

    private static long cost(Edit edit) {
        return Cost.moved(edit.least()) * POINT + Cost.units(edit.least());
    }

    private void conclude(State state, List<Edit> open, List<Need> needs, double[] prices) {
        for (int e = 0; e < reduced.length; e++) {
            reduced[e] = cost(open.get(e)) * FINE;
        }
        for (int n = 0; n < prices.length; n++) {
            long price = (long) (Math.min(GREATEST_PRICE, prices[n]) * FINE);
            sum += price * needs.get(n).deficit();
            for (int e = 0; e < reduced.length && price > 0; e++) {
                reduced[e] -= price * needs.get(n).all()[e];
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
