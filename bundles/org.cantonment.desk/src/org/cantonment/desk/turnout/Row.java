package org.cantonment.desk.turnout;

import java.util.List;

/**
 * A row of a table that opens into its parts.
 *
 * @param cells   one for each column
 * @param lacking whether something is short there; the words say so too
 * @param parts   what it opens into
 */
public record Row(List<String> cells, boolean lacking, List<Row> parts) {
    public Row {
        cells = List.copyOf(cells);
        parts = List.copyOf(parts);
    }

    /** A row without parts where nothing is short. */
    public static Row of(String... cells) {
        return new Row(List.of(cells), false, List.of());
    }
}
