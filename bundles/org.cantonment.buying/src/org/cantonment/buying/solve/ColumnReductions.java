package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What costs tell: columns that only harm, more of a column than can be of use, columns that another one betters. */
final class ColumnReductions {

    private final Draft draft;
    private final int[][] rows;
    private final long[][] factors;
    private final long[] useful;
    private final long[] missing;

    private ColumnReductions(Draft draft) {
        this.draft = draft;
        int[] counts = new int[draft.n];
        for (Row row : draft.rows) {
            for (int k = 0; k < row.size(); k++) {
                counts[row.column(k)]++;
            }
        }
        rows = new int[draft.n][];
        factors = new long[draft.n][];
        for (int j = 0; j < draft.n; j++) {
            rows[j] = new int[counts[j]];
            factors[j] = new long[counts[j]];
        }
        Arrays.fill(counts, 0);
        missing = new long[draft.rows.size()];
        for (int i = 0; i < missing.length; i++) {
            Row row = draft.rows.get(i);
            missing[i] = row.least() - draft.least(row);
            for (int k = 0; k < row.size(); k++) {
                int j = row.column(k);
                rows[j][counts[j]] = i;
                factors[j][counts[j]++] = row.factor(k);
            }
        }
        useful = new long[draft.n];
    }

    static void apply(Draft draft) {
        new ColumnReductions(draft).apply();
    }

    private void apply() {
        for (int j = 0; j < draft.n; j++) {
            if (!draft.fixed(j)) {
                fix(j);
            }
        }
        dominate();
    }

    private void fix(int j) {
        long cost = draft.cost(j);
        boolean harms = false;
        useful[j] = 0;
        for (int k = 0; k < rows[j].length; k++) {
            long factor = factors[j][k];
            harms |= factor < 0;
            if (factor > 0) {
                useful[j] = Math.max(useful[j], SafeBound.ceil(Math.max(0, missing[rows[j][k]]), factor));
            }
        }
        if (cost >= 0) {
            useful[j] += draft.lower[j];
            draft.cut(j, Math.max(draft.lower[j], useful[j]));
        } else {
            useful[j] = Long.MAX_VALUE;
        }
        if (!harms && (cost < 0 && draft.liking.unweighed(j) || draft.liking.indifferent(j))) {
            draft.raise(j, draft.upper[j]);
        }
    }

    private void dominate() {
        List<Integer> live = new ArrayList<>();
        for (int j = 0; j < draft.n; j++) {
            if (!draft.fixed(j) && draft.cost(j) >= 0) {
                live.add(j);
            }
        }
        List<List<Integer>> at = new ArrayList<>();
        for (int i = 0; i < missing.length; i++) {
            at.add(new ArrayList<>());
        }
        for (int j : live) {
            for (int i : rows[j]) {
                at.get(i).add(j);
            }
        }
        for (int k : live) {
            if (draft.cancel.cancelled()) {
                return;
            }
            List<Integer> others = candidates(k, at);
            for (int j : others) {
                if (j != k && !draft.fixed(j) && draft.upper[j] >= useful[j] && betters(j, k)) {
                    draft.cut(k, draft.lower[k]);
                    break;
                }
            }
        }
    }

    /** Whoever betters k stands in each row that k helps; the shortest of these rows names them all. */
    private List<Integer> candidates(int k, List<List<Integer>> at) {
        List<Integer> shortest = List.of();
        boolean first = true;
        for (int p = 0; p < rows[k].length; p++) {
            if (factors[k][p] > 0 && (first || at.get(rows[k][p]).size() < shortest.size())) {
                shortest = at.get(rows[k][p]);
                first = false;
            }
        }
        return shortest;
    }

    /** Whether one of j in place of one of k is liked as well and helps each row as much; of two that are alike the first does. */
    private boolean betters(int j, int k) {
        int order = draft.liking.compare(j, k);
        if (order > 0 || order == 0 && j > k && same(j, k)) {
            return false;
        }
        int p = 0;
        int q = 0;
        while (p < rows[j].length || q < rows[k].length) {
            int rj = p < rows[j].length ? rows[j][p] : Integer.MAX_VALUE;
            int rk = q < rows[k].length ? rows[k][q] : Integer.MAX_VALUE;
            long own = rj <= rk ? factors[j][p++] : 0;
            long other = rk <= rj ? factors[k][q++] : 0;
            if (own < other) {
                return false;
            }
        }
        return true;
    }

    private boolean same(int j, int k) {
        return Arrays.equals(rows[j], rows[k]) && Arrays.equals(factors[j], factors[k]);
    }
}
