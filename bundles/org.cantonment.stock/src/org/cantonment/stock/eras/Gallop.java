package org.cantonment.stock.eras;

import java.util.function.IntFunction;

import org.cantonment.stock.turnout.Depot;

/** How many of something there is enough for, found by asking for twice as many each time and then halving. */
final class Gallop {

    /** The most there surely is enough for, whether there surely is not enough for one more, and what asking took. */
    record Found(int most, boolean decided, int branches) {
    }

    private Gallop() {
    }

    /** @param end nobody asks for more than so many */
    static Found most(int end, IntFunction<Depot.Look> enough) {
        int low = 0;
        int high = 1;
        int branches = 0;
        boolean decided = true;
        boolean doubling = true;
        while (low < end && (doubling || low + 1 < high)) {
            int asked = doubling ? Math.min(high, end) : (low + high) / 2;
            Depot.Look look = enough.apply(asked);
            branches += look.branches();
            if (look.enough()) {
                low = asked;
                high = doubling ? asked * 2 : high;
            } else {
                high = asked;
                decided = look.decided();
                doubling = false;
            }
        }
        return new Found(low, decided, branches);
    }
}
