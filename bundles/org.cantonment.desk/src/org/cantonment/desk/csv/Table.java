package org.cantonment.desk.csv;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

/**
 * A table as it was read: its headings, and rows with the line of the file that each begins on. Commas part the cells, or
 * semicolons or tabs where the first line has more of those.
 *
 * @param headings the first row
 * @param rows     the others; rows without any text are left out
 */
public record Table(List<String> headings, List<Row> rows) {

    /** A row; the line is counted from 1. */
    public record Row(long line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** What stands in a column; empty if the row is too short. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }
    }

    /** It is no table; the message is a whole sentence for a person. */
    public static final class NoTable extends Exception {
        private static final long serialVersionUID = 1L;

        NoTable(String message) {
            super(message);
        }
    }

    public Table {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** @throws NoTable if nothing stands in it, or its quotes do not close */
    public static Table of(String text) throws NoTable {
        String bare = text.startsWith("\ufeff") ? text.substring(1) : text;
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(separator(bare)).ofCsvRecord(bare)) {
            for (CsvRecord record : reader) {
                if (record.getFields().stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(new Row(record.getStartingLineNumber(), record.getFields()));
                }
            }
        } catch (CsvParseException e) {
            throw new NoTable("This is no table of comma-separated values: " + reason(e) + ".");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (rows.isEmpty()) {
            throw new NoTable("Nothing stands in this table.");
        }
        return new Table(rows.get(0).cells().stream().map(String::strip).toList(), rows.subList(1, rows.size()));
    }

    private static String reason(Throwable failure) {
        Throwable at = failure;
        while (at.getCause() != null) {
            at = at.getCause();
        }
        return at.getMessage() == null ? "its quotes do not close" : at.getMessage();
    }

    private static char separator(String text) {
        String first = text.lines().findFirst().orElse("");
        char best = ',';
        for (char other : new char[] { ';', '\t' }) {
            if (count(first, other) > count(first, best)) {
                best = other;
            }
        }
        return best;
    }

    private static long count(String text, char sign) {
        return text.chars().filter(c -> c == sign).count();
    }
}
