package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.shopping.Cash;
import org.cantonment.desk.turnout.Row;

/** A player's reach as rows of a table, nearest first; a row opens into what would stand in the formation. */
public final class ReachRows {
    /** What stands in the columns. */
    public static final List<String> COLUMNS = List.of("Formation", "Era", "At least", "At most", "Money",
            "What is missing");
    /** What stands in the columns where the rows are boxes. */
    public static final List<String> BOX_COLUMNS = List.of("Box", "Code", "Opens", "Price", "From", "Formations");

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
        return new Row(List.of(row.title(), row.eraTitle(), away(row.least()), away(row.most()), money(row.least()),
                row.least().map(Filled::which).orElse(ReachText.NO_UNIT)), !now, parts);
    }

    private static Row part(String title, Filled filled) {
        List<Row> parts = filled.price().map(price -> List.of(Row.of("Cheapest", "", "", "", price.inShort(), price.words())))
                .orElse(List.of());
        return new Row(List.of(title, filled.needed() + " pieces", filled.away(), "", money(Optional.of(filled)),
                (filled.units().isEmpty() ? "nothing" : filled.units())
                        + (filled.missing().isEmpty() ? "" : "; missing: " + filled.which())), filled.lacking() > 0, parts);
    }

    private static String away(Optional<Filled> filled) {
        return filled.map(Filled::away).orElse("never");
    }

    private static String money(Optional<Filled> filled) {
        return filled.flatMap(Filled::price).map(Price::inShort).orElse("");
    }

    /** One row for each box that opens anything; a row opens into the formations. */
    public static List<Row> of(BoxesAnswer answer) {
        return answer.rows().stream().map(ReachRows::row).toList();
    }

    private static Row row(BoxRow box) {
        List<Row> parts = box.words().size() == 1 ? List.of()
                : box.words().stream().map(one -> Row.of("", "", "", "", "", one)).toList();
        return new Row(List.of(box.title(), box.code(), String.valueOf(box.opened().size()), Cash.text(box.price()),
                box.seller(), String.join("; ", box.words())), false, parts);
    }
}
