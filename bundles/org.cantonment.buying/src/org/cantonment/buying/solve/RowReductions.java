package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;

/** What rows alone tell: bounds that follow from them, factors that are greater than they need be, rows that say nothing. */
final class RowReductions {

    private static final int PAIRS = 1500;

    private RowReductions() {
    }

    static void apply(Draft draft) {
        for (int i = draft.rows.size() - 1; i >= 0 && !draft.impossible && !draft.cancel.cancelled(); i--) {
            Row row = draft.rows.get(i);
            tighten(draft, row);
            if (draft.impossible) {
                return;
            }
            Row better = clip(draft, row);
            if (better == null) {
                draft.rows.remove(i);
                draft.changed = true;
            } else if (!better.equals(row)) {
                draft.rows.set(i, better);
                draft.changed = true;
            }
        }
        List<Row> distinct = new ArrayList<>(new LinkedHashSet<>(draft.rows));
        if (distinct.size() < draft.rows.size()) {
            draft.rows.clear();
            draft.rows.addAll(distinct);
        }
    }

    private static void tighten(Draft draft, Row row) {
        long most = draft.most(row);
        if (most < row.least()) {
            draft.impossible = true;
            return;
        }
        long spare = most - row.least();
        for (int k = 0; k < row.size(); k++) {
            int j = row.column(k);
            long factor = Math.abs(row.factor(k));
            if (spare / factor < draft.upper[j] - draft.lower[j]) {
                if (row.factor(k) > 0) {
                    draft.raise(j, draft.upper[j] - spare / factor);
                } else {
                    draft.cut(j, draft.lower[j] + spare / factor);
                }
            }
        }
    }

    /** The row without fixed columns, with no factor greater than what is missing; null if it says nothing. */
    private static Row clip(Draft draft, Row row) {
        long missing = row.least() - draft.least(row);
        if (missing <= 0) {
            return null;
        }
        int count = 0;
        int[] columns = new int[row.size()];
        long[] factors = new long[row.size()];
        long least = row.least();
        long divisor = 0;
        for (int k = 0; k < row.size(); k++) {
            int j = row.column(k);
            long factor = row.factor(k);
            if (draft.fixed(j)) {
                least -= factor * draft.lower[j];
                continue;
            }
            if (factor > missing) {
                least -= (factor - missing) * draft.lower[j];
                factor = missing;
            } else if (-factor > missing) {
                least -= (factor + missing) * draft.upper[j];
                factor = -missing;
            }
            columns[count] = j;
            factors[count++] = factor;
            divisor = Search.gcd(divisor, factor);
        }
        return divided(columns, factors, count, least, divisor);
    }

    private static Row divided(int[] columns, long[] factors, int count, long least, long divisor) {
        int[] at = Arrays.copyOf(columns, count);
        long[] by = new long[count];
        for (int k = 0; k < count; k++) {
            by[k] = factors[k] / divisor;
        }
        return new Row(at, by, SafeBound.ceil(least, divisor));
    }

    /** Takes out rows that follow from one other row. */
    static void implied(Draft draft) {
        int m = draft.rows.size();
        if (m > PAIRS) {
            return;
        }
        long[] marks = new long[m];
        for (int i = 0; i < m; i++) {
            Row row = draft.rows.get(i);
            for (int k = 0; k < row.size(); k++) {
                if (row.factor(k) > 0) {
                    marks[i] |= 1L << (row.column(k) * 0x9E3779B1 >>> 26);
                }
            }
        }
        boolean[] gone = new boolean[m];
        for (int i = 0; i < m && !draft.cancel.cancelled(); i++) {
            for (int k = 0; k < m && !gone[i]; k++) {
                gone[i] = i != k && !gone[k] && (marks[k] & ~marks[i]) == 0
                        && follows(draft, draft.rows.get(i), draft.rows.get(k));
            }
        }
        int i = 0;
        for (Iterator<Row> all = draft.rows.iterator(); all.hasNext();) {
            all.next();
            if (gone[i++]) {
                all.remove();
                draft.changed = true;
            }
        }
    }

    /** Whether row a holds wherever row b does: the difference of the two is never below what is missing. */
    private static boolean follows(Draft draft, Row a, Row b) {
        long least = 0;
        int k = 0;
        int l = 0;
        while (k < a.size() || l < b.size()) {
            int ja = k < a.size() ? a.column(k) : Integer.MAX_VALUE;
            int jb = l < b.size() ? b.column(l) : Integer.MAX_VALUE;
            long factor = ja <= jb ? a.factor(k++) : 0;
            if (jb <= ja) {
                factor -= b.factor(l++);
            }
            int j = Math.min(ja, jb);
            least += factor * (factor > 0 ? draft.lower[j] : draft.upper[j]);
            if (factor < 0 && draft.upper[j] > 1L << 20) {
                return false;
            }
        }
        return least >= a.least() - b.least();
    }
}
