package org.cantonment.buying.solve;

/**
 * A whole number to be chosen.
 *
 * @param cost what one of it costs; may be negative
 * @param lower least value
 * @param upper greatest value
 * @param rank columns of a lower rank are branched on first; below 0 for one that is mostly best at its greatest value: it
 *         ranks by its amount, and values are sought with it there first
 */
public record Column(String name, long cost, long lower, long upper, int rank) {

    /** Beyond this no value goes, so that sums of products stay exact. */
    public static final long MOST = 1L << 31;

    /** @throws IllegalArgumentException unless -MOST ≤ lower ≤ MOST and -MOST ≤ upper ≤ MOST */
    public Column {
        if (lower < -MOST || upper > MOST || lower > MOST || upper < -MOST) {
            throw new IllegalArgumentException(name + " runs from " + lower + " to " + upper + "; at most " + MOST);
        }
    }

    /** The same within other bounds. */
    Column within(long least, long most) {
        return new Column(name, cost, least, most, rank);
    }
}
