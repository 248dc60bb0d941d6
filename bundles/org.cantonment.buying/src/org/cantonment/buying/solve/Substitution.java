package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Takes out columns that cost nothing, that nobody minds, and that only one row holds down: they may as well be as great as
 * that row lets them, so what it adds up takes their place. A part that is worth building in one way only is such a column.
 */
final class Substitution {

    private static final int MOST_FILLED = 4_000;

    private final Draft draft;
    private final List<List<Row>> rows = new ArrayList<>();

    private Substitution(Draft draft) {
        this.draft = draft;
        for (int j = 0; j < draft.n; j++) {
            rows.add(new ArrayList<>());
        }
        draft.rows.forEach(this::enter);
    }

    static void apply(Draft draft) {
        Substitution all = new Substitution(draft);
        for (int j = 0; j < draft.n; j++) {
            if (!draft.fixed(j) && draft.liking.indifferent(j) && !draft.cancel.cancelled()) {
                all.look(j);
            }
        }
    }

    private void enter(Row row) {
        for (int k = 0; k < row.size(); k++) {
            rows.get(row.column(k)).add(row);
        }
    }

    private void look(int j) {
        Row holding = null;
        long useful = 0;
        for (Row row : rows.get(j)) {
            long factor = factor(row, j);
            if (factor < 0) {
                if (holding != null || factor != -1) {
                    return;
                }
                holding = row;
            } else {
                useful = Math.max(useful, SafeBound.ceil(Math.max(0, row.least() - draft.least(row)), factor));
            }
        }
        if (holding == null || !alone(holding, j)
                || draft.upper[j] < Math.min(useful + draft.lower[j], draft.most(holding) + draft.lower[j] - holding.least())
                || (long) (holding.size() - 1) * rows.get(j).size() > MOST_FILLED) {
            return;
        }
        take(j, holding);
    }

    /** Whether the row has no other column that it holds down. */
    private boolean alone(Row row, int j) {
        for (int k = 0; k < row.size(); k++) {
            if (row.column(k) != j && row.factor(k) < 0) {
                return false;
            }
        }
        return true;
    }

    private static long factor(Row row, int j) {
        for (int k = 0; k < row.size(); k++) {
            if (row.column(k) == j) {
                return row.factor(k);
            }
        }
        return 0;
    }

    private void take(int j, Row holding) {
        draft.gone[j] = true;
        draft.changed = true;
        draft.substitutes.add(new Draft.Substitute(j, holding, draft.upper[j]));
        List<Row> touched = List.copyOf(rows.get(j));
        List<Row> made = new ArrayList<>();
        for (Row row : touched) {
            for (int k = 0; k < row.size(); k++) {
                rows.get(row.column(k)).remove(row);
            }
            if (row != holding) {
                made.add(with(row, j, holding));
            }
        }
        if (draft.least(holding) + draft.upper[j] - holding.least() < draft.lower[j]) {
            made.add(with(new Row(new int[] {j}, new long[] {1}, draft.lower[j]), j, holding));
        }
        draft.rows.removeAll(new HashSet<>(touched));
        made.forEach(row -> {
            draft.rows.add(row);
            enter(row);
        });
    }

    private static Row with(Row row, int j, Row holding) {
        long times = factor(row, j);
        Map<Integer, Long> terms = new TreeMap<>();
        for (int k = 0; k < row.size(); k++) {
            terms.merge(row.column(k), row.factor(k), Math::addExact);
        }
        for (int k = 0; k < holding.size(); k++) {
            terms.merge(holding.column(k), Math.multiplyExact(times, holding.factor(k)), Math::addExact);
        }
        terms.values().removeIf(factor -> factor == 0);
        return new Row(terms.keySet().stream().mapToInt(Integer::intValue).toArray(),
                terms.values().stream().mapToLong(Long::longValue).toArray(),
                Math.addExact(row.least(), Math.multiplyExact(times, holding.least())));
    }

    /** Fills in the values of the columns that went. */
    static void fill(List<Draft.Substitute> substitutes, long[] values) {
        for (int i = substitutes.size() - 1; i >= 0; i--) {
            Row row = substitutes.get(i).row();
            int j = substitutes.get(i).column();
            values[j] = 0;
            values[j] = Math.min(row.slack(values), substitutes.get(i).most());
        }
    }
}
