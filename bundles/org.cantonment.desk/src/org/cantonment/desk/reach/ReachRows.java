package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.turnout.Row;

/** A player's reach as rows of a table, nearest first; a row opens into what would stand in the formation. */
public final class ReachRows {
    /** What stands in the columns. */
    public static final List<String> COLUMNS = List.of("Formation", "Era", "At least", "At most", "What is missing");

    private ReachRows() {
    }

    /** One row for each formation and era. */
    public static List<Row> of(ReachAnswer answer) {
        return answer.rows().stream().map(ReachRows::row).toList();
    }

    private static Row row(ReachRow row) {
        List<Row> parts = new ArrayList<>();
        row.least().ifPresent(least -> parts.add(part("At least", least)));
        row.most().ifPresent(most -> parts.add(part("At most", most)));
        boolean now = row.least().filter(least -> least.lacking() == 0).isPresent();
        return new Row(List.of(row.title(), row.eraTitle(), away(row.least()), away(row.most()),
                row.least().map(ReachRows::missing).orElse(ReachText.NO_UNIT)), !now, parts);
    }

    private static Row part(String title, Filled filled) {
        return new Row(List.of(title, filled.needed() + " pieces", filled.away(), "",
                (filled.units().isEmpty() ? "nothing" : filled.units())
                        + (filled.missing().isEmpty() ? "" : "; missing: " + missing(filled))), filled.lacking() > 0, List.of());
    }

    private static String away(Optional<Filled> filled) {
        return filled.map(Filled::away).orElse("never");
    }

    private static String missing(Filled filled) {
        return String.join(", ", filled.missing().stream().map(one -> one.count() + " " + one.words()).toList());
    }
}
