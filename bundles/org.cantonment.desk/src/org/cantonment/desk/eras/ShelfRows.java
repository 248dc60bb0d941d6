package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.stock.eras.Carry;
import org.cantonment.stock.eras.EraAnswer;

/** What a shelf is good for in every era, as rows of a table that open into their parts. */
public final class ShelfRows {
    /** What stands in the columns. */
    public static final List<String> COLUMNS = List.of("Era", "Points", "Pieces", "Share", "What can be fielded");

    /**
     * A row.
     *
     * @param cells one for each column
     * @param parts what it opens into
     */
    public record Row(List<String> cells, List<Row> parts) {
        public Row {
            cells = List.copyOf(cells);
            parts = List.copyOf(parts);
        }

        private static Row of(String... cells) {
            return new Row(List.of(cells), List.of());
        }
    }

    private final ShelfAnswer answer;
    private final ShelfText text;

    private ShelfRows(ShelfAnswer answer) {
        this.answer = answer;
        this.text = new ShelfText(answer);
    }

    /** One row for each era; in it the units that stand at once, what can stand alone and what carries over. */
    public static List<Row> of(ShelfAnswer answer) {
        ShelfRows rows = new ShelfRows(answer);
        return answer.eras().eras().stream().map(rows::era).toList();
    }

    private Row era(EraAnswer era) {
        List<Row> parts = new ArrayList<>();
        era.army().units().forEach(fielded -> parts.add(Row.of("At once",
                fielded.points() * (long) fielded.count() + " points", "", "", text.fielded(fielded))));
        if (!era.army().proven()) {
            parts.add(Row.of("How sure", "", "", "", "The best that was found; no army has more than "
                    + era.army().bound() + " points."));
        }
        add("By itself", text.can(era), parts);
        add("Not to be fielded", text.cannot(era), parts);
        for (Carry carry : answer.eras().carries()) {
            if (carry.from().equals(era.era()) && !carry.to().equals(era.era())) {
                parts.add(Row.of("To " + answer.title(carry.to()), carry.points() + " of " + carry.ofPoints() + " points",
                        carry.pieces() + " of " + carry.ofPieces() + " pieces", percent(carry.points(), carry.ofPoints()),
                        "carries over"));
            }
        }
        return new Row(List.of(answer.title(era.era()), era.army().points() + " points", era.pieces() + " pieces", "",
                era.army().units().isEmpty() ? "Nothing can be fielded." : text.army(era.army())), parts);
    }

    private static void add(String title, String words, List<Row> parts) {
        if (!words.isEmpty()) {
            parts.add(Row.of(title, "", "", "", words));
        }
    }

    private static String percent(int some, int all) {
        return all == 0 ? "" : some * 100L / all + " percent";
    }
}
