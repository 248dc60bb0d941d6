package org.cantonment.buying.solve;

import java.util.Arrays;
import java.util.List;

import org.cantonment.domain.common.CancelToken;

/**
 * The basic variables of a linear programme as sums of the others. Variables 0..n-1 are the columns, n+i is what row i has
 * over its least. Each row of the table holds the factors of the variables outside the basis, and last a constant. The
 * table does not depend on the bounds: going to another place in the search only moves bounds.
 */
final class Tableau {

    private static final double NOTHING = 1e-11;

    final int n;
    private int m;
    double[][] t;
    double[] costs;
    int[] basic;
    int[] outside;
    double[] value;
    double[] lower;
    double[] upper;
    boolean[] high;

    private final Programme programme;
    private Row[] rows;
    private double[] scale;
    private int[] filled;
    private int pivots;

    Tableau(Programme programme) {
        this.programme = programme;
        n = programme.columns().size();
        filled = new int[n + 1];
        lower = new double[n];
        upper = new double[n];
        high = new boolean[n];
        begin(programme.rows());
    }

    int rows() {
        return m;
    }

    Row row(int i) {
        return rows[i];
    }

    int pivots() {
        return pivots;
    }

    /** What one unit over row i's least costs at the bounds as they are, in the programme's own measure. */
    double scale(int i) {
        return scale[i];
    }

    /** Begins anew with these rows. */
    void begin(List<Row> all) {
        m = all.size();
        rows = all.toArray(new Row[0]);
        scale = new double[m];
        t = new double[m][];
        basic = new int[m];
        value = new double[m];
        lower = Arrays.copyOf(Arrays.copyOf(lower, n), n + m);
        upper = Arrays.copyOf(Arrays.copyOf(upper, n), n + m);
        high = Arrays.copyOf(Arrays.copyOf(high, n), n + m);
        for (int i = 0; i < m; i++) {
            measure(i);
        }
        reset();
    }

    private void measure(int i) {
        long most = 1;
        for (int k = 0; k < rows[i].size(); k++) {
            most = Math.max(most, Math.abs(rows[i].factor(k)));
        }
        scale[i] = most <= 64 ? 1 : Math.scalb(1.0, 4 - Math.getExponent((double) most));
        lower[n + i] = 0;
        upper[n + i] = Double.POSITIVE_INFINITY;
    }

    private void reset() {
        outside = new int[n];
        costs = new double[n + 1];
        for (int j = 0; j < n; j++) {
            outside[j] = j;
            costs[j] = programme.columns().get(j).cost();
        }
        for (int i = 0; i < m; i++) {
            t[i] = plain(i);
            basic[i] = n + i;
        }
    }

    private double[] plain(int i) {
        double[] line = new double[n + 1];
        for (int k = 0; k < rows[i].size(); k++) {
            line[rows[i].column(k)] = rows[i].factor(k) * scale[i];
        }
        line[n] = -rows[i].least() * scale[i];
        return line;
    }

    /** Adds rows; what they have over their least enters the basis. */
    void add(List<Row> more) {
        int before = m;
        m += more.size();
        rows = Arrays.copyOf(rows, m);
        scale = Arrays.copyOf(scale, m);
        t = Arrays.copyOf(t, m);
        basic = Arrays.copyOf(basic, m);
        value = Arrays.copyOf(value, m);
        lower = Arrays.copyOf(lower, n + m);
        upper = Arrays.copyOf(upper, n + m);
        high = Arrays.copyOf(high, n + m);
        int[] where = new int[n];
        Arrays.fill(where, -1);
        int[] inRow = new int[n];
        Arrays.fill(inRow, -1);
        for (int j = 0; j < n; j++) {
            if (outside[j] < n) {
                where[outside[j]] = j;
            }
        }
        for (int i = 0; i < before; i++) {
            if (basic[i] < n) {
                inRow[basic[i]] = i;
            }
        }
        for (int i = before; i < m; i++) {
            rows[i] = more.get(i - before);
            measure(i);
            t[i] = expressed(i, where, inRow);
            basic[i] = n + i;
        }
    }

    private double[] expressed(int i, int[] where, int[] inRow) {
        double[] line = new double[n + 1];
        line[n] = -rows[i].least() * scale[i];
        for (int k = 0; k < rows[i].size(); k++) {
            int column = rows[i].column(k);
            double factor = rows[i].factor(k) * scale[i];
            if (where[column] >= 0) {
                line[where[column]] += factor;
            } else {
                double[] other = t[inRow[column]];
                for (int j = 0; j <= n; j++) {
                    line[j] += factor * other[j];
                }
            }
        }
        return line;
    }

    /** Puts what is outside the basis on the bound that its cost asks for, and reckons all values anew. */
    void settle() {
        double[] at = new double[n];
        for (int j = 0; j < n; j++) {
            int variable = outside[j];
            if (costs[j] > 1e-9 || upper[variable] == Double.POSITIVE_INFINITY) {
                high[variable] = false;
            } else if (costs[j] < -1e-9) {
                high[variable] = true;
            }
            at[j] = high[variable] ? upper[variable] : lower[variable];
        }
        for (int i = 0; i < m; i++) {
            double[] line = t[i];
            double sum = line[n];
            for (int j = 0; j < n; j++) {
                sum += line[j] * at[j];
            }
            value[i] = sum;
        }
    }

    /** What the programme costs at the values as they are. */
    double objective() {
        double sum = costs[n];
        for (int j = 0; j < n; j++) {
            sum += costs[j] * at(j);
        }
        return sum;
    }

    /** The value of what is outside the basis in place j. */
    double at(int j) {
        int variable = outside[j];
        return high[variable] ? upper[variable] : lower[variable];
    }

    /** Changes the basic variable of row r for the one in place q. */
    void pivot(int r, int q) {
        double[] line = t[r];
        double inverse = 1 / line[q];
        int count = 0;
        for (int j = 0; j <= n; j++) {
            if (j != q) {
                if (Math.abs(line[j]) > NOTHING) {
                    line[j] *= -inverse;
                    filled[count++] = j;
                } else {
                    line[j] = 0;
                }
            }
        }
        line[q] = inverse;
        for (int i = 0; i < m; i++) {
            if (i != r) {
                spread(t[i], line, q, count);
            }
        }
        spread(costs, line, q, count);
        int leaves = basic[r];
        basic[r] = outside[q];
        outside[q] = leaves;
        pivots++;
    }

    private void spread(double[] to, double[] line, int q, int count) {
        double factor = to[q];
        if (Math.abs(factor) <= NOTHING) {
            to[q] = 0;
            return;
        }
        to[q] = 0;
        for (int k = 0; k < count; k++) {
            to[filled[k]] += factor * line[filled[k]];
        }
        to[q] = factor * line[q];
    }

    /** Makes the table anew from the rows, to be rid of what rounding has spoilt; when it is cancelled, not all of it. */
    void renew(CancelToken cancel) {
        boolean[] wanted = new boolean[n + m];
        for (int i = 0; i < m; i++) {
            wanted[basic[i]] = true;
        }
        reset();
        for (int j = 0; j < n && !cancel.cancelled(); j++) {
            if (wanted[outside[j]]) {
                int best = -1;
                for (int i = 0; i < m; i++) {
                    if (!wanted[basic[i]] && (best < 0 || Math.abs(t[i][j]) > Math.abs(t[best][j]))) {
                        best = i;
                    }
                }
                if (best >= 0 && Math.abs(t[best][j]) > 1e-9) {
                    pivot(best, j);
                }
            }
        }
    }
}
