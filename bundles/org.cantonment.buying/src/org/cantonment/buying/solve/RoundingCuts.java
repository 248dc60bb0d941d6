package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;

/**
 * Rows that hold for whole numbers and not for the fractions of the moment, by mixed-integer rounding: rows are added up with
 * weights, divided, and each factor is rounded as far as it may be. All of it in whole numbers, so that a cut is true
 * whatever rounding the weights have seen.
 */
final class RoundingCuts {

    private static final int MOST = 24;
    private static final int SCALE = 5040;
    private static final long GREAT = 1L << 40;
    private static final double DEPTH = 1e-3;

    private record Cut(Row row, double depth) {
    }

    private final Tableau tableau;
    private final long[] lower;
    private final long[] upper;
    private final double[] values;
    private final List<Cut> found = new ArrayList<>();
    private final int n;
    /** The tight rows in which each column harms. */
    private final int[][] partners;

    RoundingCuts(Tableau tableau, long[] lower, long[] upper, double[] values) {
        this.tableau = tableau;
        this.lower = lower;
        this.upper = upper;
        this.values = values;
        n = values.length;
        partners = partners();
    }

    private int[][] partners() {
        List<List<Integer>> all = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            all.add(new ArrayList<>());
        }
        for (int i = 0; i < tableau.rows(); i++) {
            Row row = tableau.row(i);
            if (tight(row)) {
                for (int k = 0; k < row.size(); k++) {
                    if (row.factor(k) < 0) {
                        all.get(row.column(k)).add(i);
                    }
                }
            }
        }
        return all.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }

    /** The deepest cuts at the values of the moment; none if nobody wants them any more. */
    List<Row> find(CancelToken cancel) {
        for (int i = 0; i < tableau.rows(); i++) {
            if (cancel.cancelled()) {
                return List.of();
            }
            fromTable(i);
            fromRow(i);
        }
        found.sort(Comparator.comparingDouble(cut -> -cut.depth()));
        Set<Row> rows = new HashSet<>();
        List<Row> best = new ArrayList<>();
        for (Cut cut : found) {
            if (best.size() < MOST && rows.add(cut.row())) {
                best.add(cut.row());
            }
        }
        return best;
    }

    private static boolean fractional(double value) {
        return Math.abs(value - Math.rint(value)) > 1e-4;
    }

    /** Weights that leave no fraction but where a column is at a bound: those of the table itself, without whole parts. */
    private void fromTable(int i) {
        if (tableau.basic[i] >= n || !fractional(tableau.value[i])) {
            return;
        }
        for (int sign = -1; sign <= 1; sign += 2) {
            long[] sum = new long[n];
            long least = 0;
            for (int j = 0; j < n; j++) {
                int variable = tableau.outside[j];
                if (variable >= n) {
                    double exact = sign * tableau.t[i][j] * tableau.scale(variable - n);
                    long weight = Math.floorMod(Math.round(exact * SCALE), SCALE);
                    least += add(variable - n, weight, sum);
                }
            }
            round(sum, least, SCALE);
        }
    }

    private long add(int row, long weight, long[] sum) {
        if (weight == 0) {
            return 0;
        }
        Row one = tableau.row(row);
        for (int k = 0; k < one.size(); k++) {
            sum[one.column(k)] += weight * one.factor(k);
        }
        return weight * one.least();
    }

    /** The row itself, others added so that columns between their bounds fall away, divided by each of its factors. */
    private void fromRow(int i) {
        long[] sum = new long[n];
        boolean[] used = new boolean[tableau.rows()];
        long least = add(i, 1, sum);
        used[i] = true;
        for (int step = 0; step < 6; step++) {
            Set<Long> tried = new HashSet<>();
            for (int j = 0; j < n; j++) {
                long factor = Math.abs(sum[j]);
                if (factor > 1 && factor < 10_000 && values[j] > lower[j] + 1e-6 && tried.size() < 8 && tried.add(factor)) {
                    round(sum, least, factor);
                }
            }
            long more = join(sum, used);
            if (more == Long.MIN_VALUE) {
                return;
            }
            least += more;
        }
    }

    /** Adds a tight row that takes away the column furthest from its bounds; says what it adds to the least. */
    private long join(long[] sum, boolean[] used) {
        int best = -1;
        double most = 1e-6;
        for (int j = 0; j < n; j++) {
            double way = Math.min(values[j] - lower[j], upper[j] - values[j]);
            if (sum[j] > 0 && way > most && partner(j, sum[j], used) >= 0) {
                most = way;
                best = j;
            }
        }
        if (best < 0) {
            return Long.MIN_VALUE;
        }
        int row = partner(best, sum[best], used);
        used[row] = true;
        long factor = factor(tableau.row(row), best);
        return add(row, sum[best] / -factor, sum);
    }

    /** A tight row in which the column harms, so that a whole number of it cancels the column. */
    private int partner(int j, long factor, boolean[] used) {
        for (int i : partners[j]) {
            if (!used[i] && factor % factor(tableau.row(i), j) == 0) {
                return i;
            }
        }
        return -1;
    }

    private static long factor(Row row, int j) {
        int low = 0;
        int high = row.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            if (row.column(middle) == j) {
                return row.factor(middle);
            }
            if (row.column(middle) < j) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return 0;
    }

    private boolean tight(Row row) {
        double sum = -row.least();
        for (int k = 0; k < row.size(); k++) {
            sum += row.factor(k) * values[row.column(k)];
        }
        return sum < 1e-6;
    }

    /** Divides by so much and rounds, each column counted from its nearer bound. */
    private void round(long[] sum, long least, long by) {
        long[] factors = new long[n];
        boolean[] turned = new boolean[n];
        long right = least;
        for (int j = 0; j < n; j++) {
            if (Math.abs(sum[j]) > GREAT) {
                return;
            }
            turned[j] = upper[j] - values[j] < values[j] - lower[j];
            right -= sum[j] * (turned[j] ? upper[j] : lower[j]);
            factors[j] = turned[j] ? -sum[j] : sum[j];
        }
        long over = Math.floorMod(right, by);
        if (over == 0 || over * 100 < by) {
            return;
        }
        long rounded = Math.multiplyExact(over, SafeBound.ceil(right, by));
        for (int j = 0; j < n; j++) {
            long whole = Math.floorDiv(factors[j], by);
            factors[j] = over * whole + Math.min(over, factors[j] - whole * by);
            if (Math.abs(factors[j]) > GREAT) {
                return;
            }
        }
        double depth = depth(factors, turned, rounded);
        if (depth >= DEPTH) {
            keep(factors, turned, rounded, depth);
        }
    }

    private double depth(long[] factors, boolean[] turned, long least) {
        double sum = 0;
        double norm = 0;
        for (int j = 0; j < n; j++) {
            sum += factors[j] * (turned[j] ? upper[j] - values[j] : values[j] - lower[j]);
            norm += (double) factors[j] * factors[j];
        }
        return norm == 0 ? 0 : (least - sum) / Math.sqrt(norm);
    }

    private void keep(long[] factors, boolean[] turned, long right, double depth) {
        long divisor = 0;
        int count = 0;
        for (int j = 0; j < n; j++) {
            divisor = divisor == 1 ? 1 : Search.gcd(divisor, factors[j]);
            count += factors[j] != 0 ? 1 : 0;
        }
        long least = SafeBound.ceil(right, divisor);
        int[] columns = new int[count];
        long[] kept = new long[count];
        int k = 0;
        for (int j = 0; j < n; j++) {
            if (factors[j] != 0) {
                long factor = factors[j] / divisor;
                columns[k] = j;
                kept[k] = turned[j] ? -factor : factor;
                least += kept[k++] * (turned[j] ? upper[j] : lower[j]);
            }
        }
        found.add(new Cut(new Row(columns, kept, least), depth));
    }
}
