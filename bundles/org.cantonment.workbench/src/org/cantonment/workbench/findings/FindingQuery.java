package org.cantonment.workbench.findings;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.cantonment.editor.api.Severity;

/**
 * Which rows are shown, and in what order.
 *
 * @param words what must occur in a row, in any column and either case; parted by blanks, all must
 * @param severities the severities that are shown
 * @param column the column that is sorted by
 * @param down true for the last first
 */
public record FindingQuery(String words, Set<Severity> severities, FindingColumn column, boolean down) {

    /** Everything, gravest first. */
    public static final FindingQuery ALL = new FindingQuery("", EnumSet.allOf(Severity.class),
            FindingColumn.SEVERITY, false);

    /** Copies the set. */
    public FindingQuery {
        severities = Set.copyOf(severities);
    }

    /**
     * The same with other words.
     *
     * @param newWords what must occur in a row
     * @return the query
     */
    public FindingQuery withWords(String newWords) {
        return new FindingQuery(newWords, severities, column, down);
    }

    /**
     * The same with a severity shown or not.
     *
     * @param severity which
     * @param shown whether it is shown
     * @return the query
     */
    public FindingQuery with(Severity severity, boolean shown) {
        Set<Severity> changed = EnumSet.noneOf(Severity.class);
        changed.addAll(severities);
        if (shown) {
            changed.add(severity);
        } else {
            changed.remove(severity);
        }
        return new FindingQuery(words, changed, column, down);
    }

    /**
     * The same sorted by a column; by the same column again, the other way round.
     *
     * @param by the column
     * @return the query
     */
    public FindingQuery sorted(FindingColumn by) {
        return new FindingQuery(words, severities, by, by == column && !down);
    }

    /**
     * The rows that are to be shown.
     *
     * @param rows all rows
     * @return those that fit, in order
     */
    public List<FindingRow> apply(List<FindingRow> rows) {
        String[] wanted = words.toLowerCase(Locale.ROOT).strip().split("\\s+");
        return rows.stream().filter(row -> severities.contains(row.severity()) && fits(row, wanted))
                .sorted(column.order(down)).toList();
    }

    private static boolean fits(FindingRow row, String[] wanted) {
        String text = row.asText().toLowerCase(Locale.ROOT);
        for (String word : wanted) {
            if (!text.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
