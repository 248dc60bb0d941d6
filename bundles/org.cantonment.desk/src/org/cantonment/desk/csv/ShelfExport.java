package org.cantonment.desk.csv;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.domain.shelf.Oddment;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.domain.shelf.Source;
import org.cantonment.domain.shelf.StateShare;
import org.joda.money.Money;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

/** A shelf as a table, one row for each line of it. Imported again it is the same shelf. */
public final class ShelfExport {
    private static final List<Field> COLUMNS = List.of(Field.CERTAINTY, Field.COUNT, Field.THING, Field.STATE, Field.LOOSE,
            Field.PAID, Field.ON, Field.FROM, Field.PRINTING, Field.BUILT, Field.LOST, Field.LEFT, Field.NOTE, Field.ODDMENT,
            Field.WORTH, Field.WISH);

    private final Stockables things;

    private ShelfExport(List<Range> ranges) {
        things = new Stockables(ranges);
    }

    /**
     * The table, lines ended as RFC 4180 says, with a heading.
     *
     * @param text the text of the shelf, for its wishes in the words in which they were written
     */
    public static String of(Shelf shelf, String text, List<Range> ranges) {
        ShelfExport export = new ShelfExport(ranges);
        StringWriter table = new StringWriter();
        try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(table)) {
            writer.writeRecord(COLUMNS.stream().map(Field::word).toList());
            shelf.notes().forEach(note -> writer.writeRecord(cells(Map.of(Field.NOTE, Cell.of(List.of(note))))));
            shelf.holdings().forEach(holding -> writer.writeRecord(export.row(holding)));
            shelf.oddments().forEach(oddment -> writer.writeRecord(row(oddment)));
            Wishes.in(text).forEach(wish -> writer.writeRecord(cells(Map.of(Field.WISH, wish))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table.toString();
    }

    private static List<String> cells(Map<Field, String> row) {
        return COLUMNS.stream().map(field -> row.getOrDefault(field, "")).toList();
    }

    private static List<String> row(Oddment oddment) {
        Map<Field, String> row = new EnumMap<>(Field.class);
        row.put(Field.COUNT, String.valueOf(oddment.count()));
        row.put(Field.ODDMENT, oddment.text());
        oddment.worth().ifPresent(worth -> row.put(Field.WORTH, money(worth)));
        return cells(row);
    }

    private List<String> row(Holding holding) {
        Map<Field, String> row = new EnumMap<>(Field.class);
        row.put(Field.CERTAINTY, holding.certainty() == Certainty.KNOWN ? "" : word(holding.certainty()));
        row.put(Field.COUNT, String.valueOf(holding.count()));
        row.put(Field.THING, things.written(holding.what()));
        row.put(Field.STATE, holding.states().stream().map(ShelfExport::state).collect(Collectors.joining(", ")));
        holding.fixing().filter(fixing -> fixing != Fixing.GLUED).ifPresent(fixing -> row.put(Field.LOOSE,
                fixing == Fixing.LOOSE_BETWEEN_GAMES ? "between games" : "at the bench"));
        holding.paid().ifPresent(paid -> row.put(Field.PAID, money(paid)));
        holding.on().ifPresent(day -> row.put(Field.ON, day.toString()));
        holding.from().ifPresent(source -> row.put(Field.FROM, source(source)));
        holding.printing().ifPresent(printing -> row.put(Field.PRINTING, printing.name()));
        for (MadeAct act : MadeAct.values()) {
            row.put(Field.valueOf(act.name()), holding.made().stream().filter(made -> made.act() == act).map(this::made)
                    .collect(Collectors.joining("; ")));
        }
        row.put(Field.NOTE, Cell.of(holding.notes()));
        return cells(row);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String state(StateShare share) {
        return (share.count().isPresent() ? share.count().getAsInt() + " " : "") + word(share.state());
    }

    private String made(Made made) {
        List<String> parts = new ArrayList<>();
        for (Held held : made.things()) {
            parts.add((held.count() == 1 ? "" : held.count() + " ") + things.written(held.what()) + held.state().map(state -> " " + word(state)).orElse(""));
        }
        return String.join(", ", parts);
    }

    private static String money(Money money) {
        return money.getAmount().toPlainString() + " " + money.getCurrencyUnit().getCode();
    }

    private static String source(Source source) {
        return source.id().map(Id::name).orElse('"' + source.text() + '"');
    }
}
