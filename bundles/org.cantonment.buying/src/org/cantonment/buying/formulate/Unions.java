package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import org.cantonment.domain.common.CancelToken;

/**
 * Which unions of sets need a row by Hall's theorem. Left out are unions that another set lies within, those that fall
 * apart, and those that follow from a greater one, since what it has more can fill no more than its needs have more.
 */
final class Unions {

    /** So many sets are looked at in all their unions. */
    static final int MOST = 12;

    private static final int MOST_ROWS = 160;

    private final List<BitSet> sets;
    private final List<Long> counts;
    private final long[] most;

    private Unions(List<BitSet> sets, List<Long> counts, long[] most) {
        this.sets = sets;
        this.counts = counts;
        this.most = most;
    }

    /**
     * The unions, as lists of the numbers of the sets; empty if there are too many.
     *
     * @param counts how much each set needs
     * @param most how much there can be of each member; {@link Long#MAX_VALUE} if that is not bounded
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    static List<List<Integer>> of(List<BitSet> sets, List<Long> counts, long[] most, CancelToken cancel) {
        return sets.size() > MOST ? List.of() : new Unions(sets, counts, most).find(cancel);
    }

    private List<List<Integer>> find(CancelToken cancel) {
        List<List<Integer>> found = new ArrayList<>();
        for (int mask = 1; mask < 1 << sets.size(); mask++) {
            if (mask % 64 == 1) {
                cancel.check();
            }
            BitSet union = union(mask);
            if (connected(mask) && !follows(mask, union)) {
                if (found.size() == MOST_ROWS) {
                    return List.of();
                }
                found.add(numbers(mask));
            }
        }
        return found;
    }

    private BitSet union(int mask) {
        BitSet union = new BitSet();
        for (int g = 0; g < sets.size(); g++) {
            if ((mask >> g & 1) == 1) {
                union.or(sets.get(g));
            }
        }
        return union;
    }

    private List<Integer> numbers(int mask) {
        List<Integer> numbers = new ArrayList<>();
        for (int g = 0; g < sets.size(); g++) {
            if ((mask >> g & 1) == 1) {
                numbers.add(g);
            }
        }
        return numbers;
    }

    private boolean connected(int mask) {
        int reached = Integer.lowestOneBit(mask);
        BitSet union = union(reached);
        for (boolean grown = true; grown;) {
            grown = false;
            for (int g = 0; g < sets.size(); g++) {
                if ((mask >> g & 1) == 1 && (reached >> g & 1) == 0 && sets.get(g).intersects(union)) {
                    reached |= 1 << g;
                    union.or(sets.get(g));
                    grown = true;
                }
            }
        }
        return reached == mask;
    }

    private boolean follows(int mask, BitSet union) {
        for (int g = 0; g < sets.size(); g++) {
            if ((mask >> g & 1) == 0 && sets.get(g).intersects(union)) {
                BitSet more = (BitSet) sets.get(g).clone();
                more.andNot(union);
                long fills = 0;
                for (int i = more.nextSetBit(0); i >= 0 && fills <= counts.get(g); i = more.nextSetBit(i + 1)) {
                    fills = most[i] == Long.MAX_VALUE ? Long.MAX_VALUE : fills + most[i];
                }
                if (fills <= counts.get(g)) {
                    return true;
                }
            }
        }
        return false;
    }
}
