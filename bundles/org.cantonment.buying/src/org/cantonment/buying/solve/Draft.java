package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.List;

/** A programme while it is being reduced: its bounds move, its rows change and go; columns are fixed, never taken out. */
final class Draft {

    final Programme programme;
    final List<long[]> tiers;
    final int n;
    final long[] lower;
    final long[] upper;
    final List<Row> rows;
    boolean impossible;
    boolean changed;

    Draft(Programme programme, List<long[]> tiers) {
        this.programme = programme;
        this.tiers = tiers;
        n = programme.columns().size();
        lower = programme.columns().stream().mapToLong(Column::lower).toArray();
        upper = programme.columns().stream().mapToLong(Column::upper).toArray();
        rows = new ArrayList<>(programme.rows());
        for (int j = 0; j < n; j++) {
            impossible |= lower[j] > upper[j];
        }
    }

    boolean fixed(int j) {
        return lower[j] == upper[j];
    }

    void raise(int j, long to) {
        if (to > lower[j]) {
            lower[j] = to;
            changed = true;
            impossible |= to > upper[j];
        }
    }

    void cut(int j, long to) {
        if (to < upper[j]) {
            upper[j] = to;
            changed = true;
            impossible |= to < lower[j];
        }
    }

    /** How column j compares with column k by cost, then by each of the tiers. */
    int compare(int j, int k) {
        int order = Long.compare(programme.columns().get(j).cost(), programme.columns().get(k).cost());
        for (int t = 0; order == 0 && t < tiers.size(); t++) {
            order = Long.compare(tiers.get(t)[j], tiers.get(t)[k]);
        }
        return order;
    }

    /** Whether one more of column j is worse, better or all one: 1, -1, 0. */
    int worth(int j) {
        int sign = Long.signum(programme.columns().get(j).cost());
        for (int t = 0; sign == 0 && t < tiers.size(); t++) {
            sign = Long.signum(tiers.get(t)[j]);
        }
        return sign;
    }

    /** The least that a row's sum can be. */
    long least(Row row) {
        long sum = 0;
        for (int k = 0; k < row.size(); k++) {
            long factor = row.factor(k);
            sum = Math.addExact(sum, Math.multiplyExact(factor,
                    factor > 0 ? lower[row.column(k)] : upper[row.column(k)]));
        }
        return sum;
    }

    /** The most that a row's sum can be. */
    long most(Row row) {
        long sum = 0;
        for (int k = 0; k < row.size(); k++) {
            long factor = row.factor(k);
            sum = Math.addExact(sum, Math.multiplyExact(factor,
                    factor > 0 ? upper[row.column(k)] : lower[row.column(k)]));
        }
        return sum;
    }
}
