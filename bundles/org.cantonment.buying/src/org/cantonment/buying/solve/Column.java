package org.cantonment.buying.solve;

/**
 * A whole number to be chosen.
 *
 * @param cost what one of it costs; may be negative
 * @param lower least value
 * @param upper greatest value
 * @param rank columns of a lower rank are branched on first
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
}
