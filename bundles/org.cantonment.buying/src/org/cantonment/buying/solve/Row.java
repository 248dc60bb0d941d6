package org.cantonment.buying.solve;

import java.util.Arrays;

/** The sum of factors times columns is at least so much. The columns are in ascending order, the factors never 0. */
public final class Row {

    private final int[] columns;
    private final long[] factors;
    private final long least;

    Row(int[] columns, long[] factors, long least) {
        this.columns = columns;
        this.factors = factors;
        this.least = least;
    }

    /** How many columns it has. */
    public int size() {
        return columns.length;
    }

    /** The number of its k-th column. */
    public int column(int k) {
        return columns[k];
    }

    /** The factor of its k-th column. */
    public long factor(int k) {
        return factors[k];
    }

    /** What the sum must reach. */
    public long least() {
        return least;
    }

    /** What the sum is at these values, less what it must reach: not below 0 where the row holds. */
    public long slack(long[] values) {
        long sum = -least;
        for (int k = 0; k < columns.length; k++) {
            sum = Math.addExact(sum, Math.multiplyExact(factors[k], values[columns[k]]));
        }
        return sum;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Row row && least == row.least && Arrays.equals(columns, row.columns)
                && Arrays.equals(factors, row.factors);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(columns) + Arrays.hashCode(factors)) + Long.hashCode(least);
    }
}
