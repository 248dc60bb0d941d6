package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.CancelToken;

/** A programme while it is being reduced: its bounds move, its rows change and go; columns are fixed, never taken out. */
final class Draft {

    final Programme programme;
    final Liking liking;
    /** After which it is left as far as it has come. */
    final CancelToken cancel;
    final int n;
    final long[] lower;
    final long[] upper;
    final List<Row> rows;
    /** The columns that stand for sums of others, in the order in which they went. */
    final List<Substitute> substitutes = new ArrayList<>();
    final boolean[] gone;
    boolean impossible;
    boolean changed;

    /** A column that went: it is what this row's sum has over its least, itself left out, but no more than so much. */
    record Substitute(int column, Row row, long most) {
    }

    Draft(Programme programme, Preference preference, CancelToken cancel) {
        this.cancel = cancel;
        this.programme = programme;
        liking = new Liking(programme, preference);
        gone = new boolean[programme.columns().size()];
        n = programme.columns().size();
        lower = programme.columns().stream().mapToLong(Column::lower).toArray();
        upper = programme.columns().stream().mapToLong(Column::upper).toArray();
        rows = new ArrayList<>(programme.rows());
        for (int j = 0; j < n; j++) {
            impossible |= lower[j] > upper[j];
        }
    }

    boolean fixed(int j) {
        return lower[j] == upper[j] || gone[j];
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

    long cost(int j) {
        return programme.columns().get(j).cost();
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
