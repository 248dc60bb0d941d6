package org.cantonment.desk.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Range;

/**
 * Rows of a table as lines of a shelf. A row that makes no sense becomes a remark with all that stood in it, and is found;
 * what stands in a column that nobody told about becomes a note. So nothing is lost.
 */
public final class ShelfImport {
    /** The code of a row that makes no sense. */
    public static final String ROW = "shelf.row";

    private static final Pattern NAME = Pattern.compile("\\p{Lu}[\\p{L}\\p{N}]*(-[\\p{L}\\p{N}]+)*(/[\\p{L}\\p{N}-]+)?");
    private static final Pattern COUNT = Pattern.compile("[0-9]{1,7}");
    private static final Pattern GUESSED = Pattern.compile("~ ?[0-9]{1,7}|[0-9]{1,7} ?\\?");
    private static final String UNKNOWN = "?";
    private static final Set<String> YES = Set.of("yes", "y", "x", "all");
    private static final Set<String> NO = Set.of("no", "n", "-", "none", "0");
    private static final Pattern MONEY = Pattern.compile("([0-9]+)(?:[.,]([0-9]+))?(?: ?([A-Z]{3}))?");
    private static final Pattern STATES = Pattern.compile("([0-9]+ )?(bare|primed|painted|converted)"
            + "(, ?([0-9]+ )?(bare|primed|painted|converted))*");

    /**
     * What became of a row.
     *
     * @param line    the line of the table's file that it begins on, from 1
     * @param lines   the lines of the shelf
     * @param trouble why it made no sense, as a whole sentence; empty if it did
     */
    public record Made(long line, List<String> lines, String trouble) {
        public Made {
            lines = List.copyOf(lines);
        }
    }

    private static final class Odd extends Exception {
        private static final long serialVersionUID = 1L;

        Odd(String message) {
            super(message, null, false, false);
        }
    }

    private final Table table;
    private final List<Optional<Field>> fields;
    private final Stockables things;

    private ShelfImport(Table table, List<Optional<Field>> fields, List<Range> ranges) {
        this.table = table;
        this.fields = fields;
        this.things = new Stockables(ranges);
    }

    /** Each row of the table, in its order. */
    public static List<Made> of(Table table, List<Optional<Field>> fields, List<Range> ranges) {
        ShelfImport one = new ShelfImport(table, fields, ranges);
        return table.rows().stream().map(one::row).toList();
    }

    /** A row that made no sense after all. */
    public static Made refused(Table table, int row, String trouble) {
        return new Made(table.rows().get(row).line(), List.of(remark(table, table.rows().get(row), trouble)), trouble);
    }

    private Made row(Table.Row row) {
        try {
            return new Made(row.line(), lines(row), "");
        } catch (Odd e) {
            return new Made(row.line(), List.of(remark(table, row, e.getMessage())), e.getMessage());
        }
    }

    private List<String> lines(Table.Row row) throws Odd {
        if (!cell(row, Field.THING).isEmpty()) {
            return holding(row);
        }
        if (!cell(row, Field.ODDMENT).isEmpty()) {
            return oddment(row);
        }
        if (!cell(row, Field.WISH).isEmpty()) {
            return Wishes.lines(oneLine(cell(row, Field.WISH)));
        }
        return withWishes(fields) && noteAlone(row) ? note(row) : holding(row);
    }

    private boolean noteAlone(Table.Row row) {
        return !cell(row, Field.NOTE).isEmpty() && row.cells().stream().filter(one -> !one.isBlank()).count() == 1;
    }

    private List<String> note(Table.Row row) throws Odd {
        if (!table.rows().subList(0, table.rows().indexOf(row)).stream().allMatch(this::noteAlone)) {
            throw new Odd("A note of the whole shelf stands above everything that lies on it.");
        }
        return Cell.parts(oneLine(cell(row, Field.NOTE))).stream().map(note -> "  . note " + quoted(note)).toList();
    }

    /** Whether a table says what is wished and noted of the whole shelf, so that nothing of that kind is kept beside it. */
    public static boolean withWishes(List<Optional<Field>> fields) {
        return fields.contains(Optional.of(Field.WISH));
    }

    private String cell(Table.Row row, Field field) {
        int at = fields.indexOf(Optional.of(field));
        return at < 0 ? "" : row.cell(at);
    }

    private List<String> oddment(Table.Row row) throws Odd {
        String worth = cell(row, Field.WORTH);
        return List.of("oddment " + count(row) + quoted(cell(row, Field.ODDMENT))
                + (worth.isEmpty() ? "" : " worth " + money(worth)));
    }

    private List<String> holding(Table.Row row) throws Odd {
        StringBuilder line = new StringBuilder(certainty(row)).append(count(row)).append(thing(cell(row, Field.THING)));
        line.append(states(row));
        String loose = cell(row, Field.LOOSE);
        line.append(loose.isEmpty() ? "" : " loose " + loose);
        String paid = cell(row, Field.PAID);
        line.append(paid.isEmpty() ? "" : " for " + money(paid));
        line.append(mark(row, Field.ON, "on"));
        String from = cell(row, Field.FROM);
        line.append(from.isEmpty() ? "" : " from " + (NAME.matcher(from).matches() ? from : quoted(unquoted(from))));
        line.append(mark(row, Field.PRINTING, "printing"));
        List<String> lines = new ArrayList<>(List.of(line.toString()));
        for (Field act : List.of(Field.BUILT, Field.LOST, Field.LEFT)) {
            for (String made : parts(cell(row, act))) {
                lines.add("  . " + act.word() + " " + made);
            }
        }
        parts(cell(row, Field.NOTE)).forEach(note -> lines.add("  . note " + quoted(note)));
        for (int at = 0; at < fields.size(); at++) {
            if (fields.get(at).isEmpty() && !row.cell(at).isEmpty()) {
                lines.add("  . note " + quoted(table.headings().get(at) + ": " + row.cell(at)));
            }
        }
        return lines;
    }

    private String mark(Table.Row row, Field field, String word) {
        return cell(row, field).isEmpty() ? "" : " " + word + " " + oneLine(cell(row, field));
    }

    private static List<String> parts(String cell) {
        return Cell.parts(oneLine(cell));
    }

    private String states(Table.Row row) throws Odd {
        String states = cell(row, Field.STATE).toLowerCase(Locale.ROOT);
        String painted = cell(row, Field.PAINTED).toLowerCase(Locale.ROOT);
        if (!states.isEmpty() && !painted.isEmpty()) {
            throw new Odd("Two columns say how far it is: '" + states + "', and painted '" + painted + "'.");
        }
        if (YES.contains(painted)) {
            return " painted";
        }
        if (!painted.isEmpty()) {
            if (!NO.contains(painted) && !COUNT.matcher(painted).matches()) {
                throw new Odd("'" + painted + "' does not say how many are painted: write yes, no or a whole number.");
            }
            return NO.contains(painted) ? "" : ", " + painted + " painted";
        }
        if (states.isEmpty()) {
            return "";
        }
        if (!STATES.matcher(states).matches()) {
            throw new Odd("'" + states + "' is no state: write bare, primed, painted or converted, each with a count"
                    + " before it if need be.");
        }
        return (Character.isDigit(states.charAt(0)) ? ", " : " ") + states;
    }

    private String certainty(Table.Row row) throws Odd {
        String word = cell(row, Field.CERTAINTY).toLowerCase(Locale.ROOT);
        if (!List.of("", "known", "guessed", "unknown").contains(word)) {
            throw new Odd("'" + word + "' is no certainty: write known, guessed or unknown.");
        }
        String count = cell(row, Field.COUNT);
        String meant = count.equals(UNKNOWN) ? "unknown" : GUESSED.matcher(count).matches() ? "guessed" : word;
        if (!word.isEmpty() && !word.equals(meant)) {
            throw new Odd("'" + count + "' is " + meant + ", and beside it stands '" + word + "'.");
        }
        return meant.isEmpty() || meant.equals("known") ? "" : meant + " ";
    }

    private String count(Table.Row row) throws Odd {
        String count = cell(row, Field.COUNT);
        if (!count.isEmpty() && !count.equals(UNKNOWN) && !COUNT.matcher(count).matches() && !GUESSED.matcher(count).matches()) {
            throw new Odd("'" + count + "' is no count: write a whole number.");
        }
        String number = count.replaceAll("[^0-9]", "");
        return number.isEmpty() || number.equals("1") ? "" : number + " ";
    }

    private String thing(String word) throws Odd {
        if (word.isEmpty()) {
            throw new Odd("Nothing says what it is.");
        }
        Set<Id> found = things.find(word);
        if (found.isEmpty()) {
            throw new Odd("No range here has '" + word + "'." + things.near(word).map(near -> " The nearest is '" + near + "'.")
                    .orElse(""));
        }
        if (found.size() > 1) {
            throw new Odd("'" + word + "' may be " + found.stream().map(Id::text).collect(Collectors.joining(" or "))
                    + ": write which.");
        }
        return things.written(found.iterator().next());
    }

    private static String money(String cell) throws Odd {
        var money = MONEY.matcher(cell.strip());
        if (!money.matches()) {
            throw new Odd("'" + cell + "' is no amount of money: write it as 24.50 or 24.50 EUR.");
        }
        String decimals = money.group(2) == null ? "" : "." + money.group(2);
        return money.group(1) + decimals + (money.group(3) == null ? "" : " " + money.group(3));
    }

    private static String unquoted(String text) {
        return text.length() > 1 && text.startsWith("\"") && text.endsWith("\"") ? text.substring(1, text.length() - 1) : text;
    }

    // A text of the notation stands on one line and between quotes.
    private static String quoted(String text) {
        return '"' + oneLine(text).replace('"', '\'') + '"';
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    }

    private static String remark(Table table, Table.Row row, String trouble) {
        List<String> cells = new ArrayList<>();
        for (int at = 0; at < row.cells().size(); at++) {
            if (!row.cell(at).isEmpty()) {
                cells.add((at < table.headings().size() ? table.headings().get(at) : "column " + (at + 1)) + "="
                        + row.cell(at));
            }
        }
        return "# row " + row.line() + " not understood: " + oneLine(String.join("; ", cells)) + "  (" + oneLine(trouble) + ")";
    }
}
