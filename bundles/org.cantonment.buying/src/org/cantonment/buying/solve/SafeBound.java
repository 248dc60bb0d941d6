package org.cantonment.buying.solve;

import java.util.Arrays;
import java.util.List;

/**
 * A bound in whole numbers out of weights for the rows. Any weights that are not below 0 give a true bound, whatever
 * rounding has done to them: the sum of weighted rows is a row again, and what it leaves of each column's cost is paid at
 * the cheaper of that column's bounds.
 */
final class SafeBound {

    private final List<Column> columns;
    private final long[] rest;
    private int shift;
    private long bound;
    private boolean sound;

    SafeBound(List<Column> columns) {
        this.columns = columns;
        rest = new long[columns.size()];
    }

    /** Reckons the bound on the cost within these bounds; says whether the numbers were small enough to be exact. */
    boolean reckon(Tableau tableau, double[] weights, long[] lower, long[] upper) {
        return reckon(tableau, weights, lower, upper, true);
    }

    /** Whether these weights show that nothing within the bounds lets all rows hold. */
    boolean refutes(Tableau tableau, double[] weights, long[] lower, long[] upper) {
        return reckon(tableau, weights, lower, upper, false) && bound > 0;
    }

    private boolean reckon(Tableau tableau, double[] weights, long[] lower, long[] upper, boolean withCost) {
        for (shift = 34; shift >= 4; shift -= 6) {
            try {
                sum(tableau, weights, lower, upper, withCost);
                sound = true;
                return true;
            } catch (ArithmeticException tooGreat) {
                sound = false;
            }
        }
        return false;
    }

    private void sum(Tableau tableau, double[] weights, long[] lower, long[] upper, boolean withCost) {
        if (withCost) {
            for (int j = 0; j < rest.length; j++) {
                rest[j] = Math.multiplyExact(columns.get(j).cost(), 1L << shift);
            }
        } else {
            Arrays.fill(rest, 0);
        }
        long total = 0;
        for (int i = 0; i < tableau.rows(); i++) {
            double exact = weights[i] * (1L << shift);
            if (exact >= 1) {
                if (exact > 1L << 52) {
                    throw new ArithmeticException("weight");
                }
                long weight = Math.round(exact);
                Row row = tableau.row(i);
                total = Math.addExact(total, Math.multiplyExact(weight, row.least()));
                for (int k = 0; k < row.size(); k++) {
                    int j = row.column(k);
                    rest[j] = Math.subtractExact(rest[j], Math.multiplyExact(weight, row.factor(k)));
                }
            }
        }
        for (int j = 0; j < rest.length; j++) {
            if (rest[j] != 0) {
                total = Math.addExact(total, Math.multiplyExact(rest[j], rest[j] > 0 ? lower[j] : upper[j]));
            }
        }
        bound = total;
    }

    /** The least multiple of the step that is not below the bound. */
    long roundedUp(long step) {
        return Math.multiplyExact(ceil(ceil(bound, 1L << shift), step), step);
    }

    /**
     * Narrows the bounds to what can still cost no more than this much; says whether anything moved, and leaves crossed
     * bounds where nothing can.
     */
    boolean narrow(long most, long[] lower, long[] upper) {
        if (!sound) {
            return false;
        }
        long room;
        try {
            room = Math.subtractExact(Math.multiplyExact(most, 1L << shift), bound);
        } catch (ArithmeticException tooGreat) {
            return false;
        }
        if (room < 0) {
            return false;
        }
        boolean moved = false;
        for (int j = 0; j < rest.length; j++) {
            if (rest[j] > 0 && (upper[j] - lower[j]) > room / rest[j]) {
                upper[j] = lower[j] + room / rest[j];
                moved = true;
            } else if (rest[j] < 0 && rest[j] != Long.MIN_VALUE && (upper[j] - lower[j]) > room / -rest[j]) {
                lower[j] = upper[j] - room / -rest[j];
                moved = true;
            }
        }
        return moved;
    }

    static long ceil(long number, long by) {
        return -Math.floorDiv(-number, by);
    }
}
