package org.cantonment.rules.change;

import org.cantonment.rules.view.LeastFill;

/** Points moved and units touched in one number, so that they add up and compare at once: the points first. */
final class Cost {

    /** More than any change costs. */
    static final long NEVER = LeastFill.NEVER;

    private static final int UNITS = 22;
    private static final long MOST_UNITS = (1L << UNITS) - 1;
    private static final long MOST_POINTS = 1L << 38;

    private Cost() {
    }

    static long of(long moved, long units) {
        return Math.min(MOST_POINTS, moved) << UNITS | Math.min(MOST_UNITS, units);
    }

    static long moved(long cost) {
        return cost >> UNITS;
    }

    static int units(long cost) {
        return (int) (cost & MOST_UNITS);
    }
}
