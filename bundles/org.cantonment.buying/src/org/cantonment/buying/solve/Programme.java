package org.cantonment.buying.solve;

import java.util.List;

/** Choose values for the columns, within their bounds, so that all rows hold and the cost is least. */
public record Programme(List<Column> columns, List<Row> rows) {

    public Programme {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** What these values cost. */
    public long cost(long[] values) {
        long sum = 0;
        for (int j = 0; j < values.length; j++) {
            sum = Math.addExact(sum, Math.multiplyExact(columns.get(j).cost(), values[j]));
        }
        return sum;
    }

    /** Whether these values lie within the bounds and all rows hold. */
    public boolean holds(long[] values) {
        for (int j = 0; j < values.length; j++) {
            if (values[j] < columns.get(j).lower() || values[j] > columns.get(j).upper()) {
                return false;
            }
        }
        for (Row row : rows) {
            if (row.slack(values) < 0) {
                return false;
            }
        }
        return true;
    }
}
