package org.cantonment.workbench.findings;

import java.util.Comparator;
import java.util.function.Function;

/** The columns of the view, in the order in which they are shown. */
public enum FindingColumn {
    /** How grave it is, as a word beside its sign. */
    SEVERITY("Kind", 11, Comparator.comparing(FindingRow::severity), row -> row.severity().word()),
    /** What is said. */
    MESSAGE("Finding", 58, Comparator.comparing(FindingRow::message, String.CASE_INSENSITIVE_ORDER),
            FindingRow::message),
    /** The rule that was broken. */
    RULE("Rule", 24, Comparator.comparing(row -> row.rule().label(), String.CASE_INSENSITIVE_ORDER),
            row -> row.rule().label()),
    /** The book. */
    FILE("Book", 20, Comparator.comparing(FindingRow::fileLabel), FindingRow::fileLabel),
    /** The line in the book. */
    LINE("Line", 6, Comparator.comparingInt(FindingRow::line), row -> Integer.toString(row.line()));

    private static final Comparator<FindingRow> PLACE = Comparator.comparing(FindingRow::fileLabel)
            .thenComparingInt(FindingRow::offset).thenComparing(FindingRow::severity)
            .thenComparing(FindingRow::message);

    private final String title;
    private final int weight;
    private final Comparator<FindingRow> order;
    private final Function<FindingRow, String> text;

    FindingColumn(String title, int weight, Comparator<FindingRow> order, Function<FindingRow, String> text) {
        this.title = title;
        this.weight = weight;
        this.order = order;
        this.text = text;
    }

    /** The heading. */
    public String title() {
        return title;
    }

    /** The share of the width, in characters of ordinary text. */
    public int weight() {
        return weight;
    }

    /**
     * What a row shows in this column.
     *
     * @param row any row
     * @return its text, possibly empty
     */
    public String text(FindingRow row) {
        return text.apply(row);
    }

    /**
     * The order by this column; rows that are equal in it stand by place.
     *
     * @param down true for the last first
     * @return a total order
     */
    public Comparator<FindingRow> order(boolean down) {
        return (down ? order.reversed() : order).thenComparing(PLACE);
    }
}
