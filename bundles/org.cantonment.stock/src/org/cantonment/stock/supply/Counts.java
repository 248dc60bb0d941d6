package org.cantonment.stock.supply;

/** Sums and products of counts, which stop at the most that is counted. */
final class Counts {

    /** More than any shelf holds; a sum of two never overflows. */
    static final int MOST = 1_000_000;

    private Counts() {
    }

    static int sum(int one, int other) {
        return (int) Math.min(MOST, (long) one + other);
    }

    static int times(int one, int other) {
        return (int) Math.min(MOST, (long) one * other);
    }
}
