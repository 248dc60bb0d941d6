package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Puts a programme together. */
public final class ProgrammeMaker {

    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** Begins with nothing. */
    public ProgrammeMaker() {
    }

    /** Begins with a programme. */
    public ProgrammeMaker(Programme begun) {
        columns.addAll(begun.columns());
        rows.addAll(begun.rows());
    }

    /** A column, and its number. */
    public int column(String name, long cost, long lower, long upper, int rank) {
        columns.add(new Column(name, cost, lower, upper, rank));
        return columns.size() - 1;
    }

    /** The sum is at least so much. */
    public void atLeast(Sum sum, long least) {
        rows.add(sum.row(1, least));
    }

    /** The sum is at most so much. */
    public void atMost(Sum sum, long most) {
        rows.add(sum.row(-1, -most));
    }

    /** How many columns there are. */
    public int columns() {
        return columns.size();
    }

    /** The programme as it stands. */
    public Programme make() {
        return new Programme(columns, rows);
    }

    /** The programme as it stands, but all that costs is one column, one for each. */
    public Programme make(int costly) {
        List<Column> priced = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            priced.add(new Column(column.name(), j == costly ? 1 : 0, column.lower(), column.upper(), column.rank()));
        }
        return new Programme(priced, rows);
    }

    /** The programme as it stands, but some columns are settled and cost nothing, and some cost one, one for each. */
    public Programme make(Map<Integer, Long> settled, Set<Integer> costly) {
        List<Column> priced = new ArrayList<>();
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            Long value = settled.get(j);
            priced.add(value != null ? new Column(column.name(), 0, value, value, column.rank())
                    : new Column(column.name(), costly.contains(j) ? 1 : column.cost(), column.lower(), column.upper(), column.rank()));
        }
        return new Programme(priced, rows);
    }

    /** A sum of factors times columns. */
    public static final class Sum {

        private final Map<Integer, Long> terms = new TreeMap<>();

        /** Adds so many times a column. */
        public Sum add(long factor, int column) {
            terms.merge(column, factor, Math::addExact);
            return this;
        }

        /** Adds so many times another sum. */
        public Sum add(long factor, Sum other) {
            other.terms.forEach((column, times) -> add(Math.multiplyExact(factor, times), column));
            return this;
        }

        /** Whether nothing stands in it. */
        public boolean isEmpty() {
            return terms.values().stream().allMatch(factor -> factor == 0);
        }

        /** What it is at these values. */
        public long value(long[] values) {
            return terms.entrySet().stream().mapToLong(term -> Math.multiplyExact(term.getValue(), values[term.getKey()]))
                    .reduce(0, Math::addExact);
        }

        private Row row(long sign, long least) {
            terms.values().removeIf(factor -> factor == 0);
            int[] at = new int[terms.size()];
            long[] factors = new long[at.length];
            int k = 0;
            for (Map.Entry<Integer, Long> term : terms.entrySet()) {
                at[k] = term.getKey();
                factors[k++] = sign * term.getValue();
            }
            return new Row(at, factors, least);
        }
    }
}
