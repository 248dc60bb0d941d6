package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.CancelToken;

/**
 * A programme reduced: what its rows and costs decide is fixed, and what is left falls into parts that share no row.
 *
 * @param fixed the values decided, one for each column; where a column is left, its value is in a part
 * @param parts the rest
 * @param substitutes columns that follow from others
 */
record Reduction(boolean impossible, long[] fixed, List<Part> parts, List<Draft.Substitute> substitutes) {

    private static final int ROUNDS = 30;

    /** A part of the programme, and the numbers of its columns in the whole. */
    record Part(Programme programme, int[] columns) {
    }

    /**
     * Reduces as far as can be. Of values that are as good as others, those that are preferred are still there.
     *
     * @param cancel after which it is left as far as it has come
     */
    static Reduction of(Programme programme, Preference preference, CancelToken cancel) {
        Draft draft = new Draft(programme, preference, cancel);
        draft.changed = true;
        for (int round = 0; round < ROUNDS && draft.changed && !draft.impossible && !cancel.cancelled(); round++) {
            draft.changed = false;
            RowReductions.apply(draft);
            if (!draft.impossible && !cancel.cancelled()) {
                ColumnReductions.apply(draft);
            }
            if (!draft.changed && !draft.impossible && !cancel.cancelled()) {
                Substitution.apply(draft);
            }
            if (!draft.changed && !draft.impossible && !cancel.cancelled()) {
                RowReductions.implied(draft);
            }
        }
        if (draft.impossible) {
            return new Reduction(true, new long[0], List.of(), List.of());
        }
        return new Reduction(false, draft.lower.clone(), parts(draft), draft.substitutes);
    }

    /** How many columns are left. */
    int columns() {
        return parts.stream().mapToInt(part -> part.columns().length).sum();
    }

    /** The values of the whole out of those of the parts. */
    long[] whole(List<long[]> values) {
        long[] whole = fixed.clone();
        for (int i = 0; i < parts.size(); i++) {
            for (int k = 0; k < parts.get(i).columns().length; k++) {
                whole[parts.get(i).columns()[k]] = values.get(i)[k];
            }
        }
        Substitution.fill(substitutes, whole);
        return whole;
    }

    private static List<Part> parts(Draft draft) {
        int[] group = new int[draft.n];
        Arrays.setAll(group, j -> j);
        for (Row row : draft.rows) {
            int first = -1;
            for (int k = 0; k < row.size(); k++) {
                if (!draft.fixed(row.column(k))) {
                    if (first < 0) {
                        first = row.column(k);
                    }
                    group[find(group, row.column(k))] = find(group, first);
                }
            }
        }
        Map<Integer, List<Integer>> columns = new LinkedHashMap<>();
        for (int j = 0; j < draft.n; j++) {
            if (!draft.fixed(j)) {
                columns.computeIfAbsent(find(group, j), key -> new ArrayList<>()).add(j);
            }
        }
        Map<Integer, List<Row>> rows = new LinkedHashMap<>();
        for (Row row : draft.rows) {
            for (int k = 0; k < row.size(); k++) {
                if (!draft.fixed(row.column(k))) {
                    rows.computeIfAbsent(find(group, row.column(k)), key -> new ArrayList<>()).add(row);
                    break;
                }
            }
        }
        List<Part> parts = new ArrayList<>();
        columns.forEach((key, list) -> parts.add(part(draft, list, rows.getOrDefault(key, List.of()))));
        return parts;
    }

    private static int find(int[] group, int j) {
        int at = j;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }

    private static Part part(Draft draft, List<Integer> columns, List<Row> rows) {
        Map<Integer, Integer> number = new LinkedHashMap<>();
        List<Column> own = new ArrayList<>();
        for (int j : columns) {
            Column column = draft.programme.columns().get(j);
            number.put(j, own.size());
            own.add(new Column(column.name(), column.cost(), draft.lower[j], draft.upper[j], column.rank()));
        }
        List<Row> renamed = new ArrayList<>();
        for (Row row : rows) {
            renamed.add(renamed(draft, row, number));
        }
        int[] which = columns.stream().mapToInt(Integer::intValue).toArray();
        return new Part(new Programme(own, renamed), which);
    }

    private static Row renamed(Draft draft, Row row, Map<Integer, Integer> number) {
        int count = 0;
        int[] at = new int[row.size()];
        long[] factors = new long[row.size()];
        long least = row.least();
        for (int k = 0; k < row.size(); k++) {
            Integer own = number.get(row.column(k));
            if (own == null) {
                least -= row.factor(k) * draft.lower[row.column(k)];
            } else {
                at[count] = own;
                factors[count++] = row.factor(k);
            }
        }
        return new Row(Arrays.copyOf(at, count), Arrays.copyOf(factors, count), least);
    }
}
