package org.cantonment.desk.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.csv.ShelfImport.Made;

/**
 * The text of a shelf whose things come from a table. Its first line and what stands before it stay as they are, and so do its
 * wishes and notes, unless the table has those, too.
 *
 * @param head what stands before the things
 * @param tail what stands behind them
 */
public record ShelfFile(List<String> head, List<String> tail) {

    /** It cannot be told what the shelf is to be; the message is a whole sentence for a person. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message);
        }
    }

    /**
     * A text, and which of its lines came from which row.
     *
     * @param firstLine the first line of each row, from 1
     */
    public record Written(String text, List<Integer> firstLine) {
        public Written {
            firstLine = List.copyOf(firstLine);
        }

        /** The row that a line came from; -1 if none. */
        public int rowOf(int line) {
            int row = -1;
            for (int i = 0; i < firstLine.size() && firstLine.get(i) <= line; i++) {
                row = i;
            }
            return row;
        }
    }

    public ShelfFile {
        head = List.copyOf(head);
        tail = List.copyOf(tail);
    }

    /** A shelf that is not there yet. @throws Unclear if nobody says whose it is */
    public static ShelfFile anew(Optional<String> of, Optional<String> in, Optional<String> on) throws Unclear {
        if (of.isEmpty()) {
            throw new Unclear("Say whose shelf it is: --of PLAYER, or --of \"the club\".");
        }
        return new ShelfFile(List.of("shelf of " + of.get() + in.map(currency -> " in " + currency).orElse("")
                + on.map(day -> " on " + day).orElse("")), List.of());
    }

    /**
     * A shelf that is there: what lies on it is taken off.
     *
     * @param wishes whether its wishes and notes are taken off, too
     */
    public static ShelfFile of(String text, boolean wishes) {
        List<String> head = new ArrayList<>();
        List<String> tail = new ArrayList<>();
        boolean begun = false;
        boolean kept = true;
        boolean things = false;
        for (String line : text.lines().toList()) {
            String bare = line.strip();
            boolean remark = bare.startsWith("#");
            boolean card = !bare.isEmpty() && !remark && !bare.startsWith(".");
            if (card) {
                kept = !begun || !wishes && (bare.startsWith("wish ") || bare.startsWith("note "));
                things |= begun;
                begun = true;
            }
            if (bare.matches("# (column \".*\" is \\w+|row \\d+ not understood: .*)")) {
                continue;
            }
            boolean noted = wishes && begun && !things && bare.matches("[.]\\s*note\\s.*");
            if (kept && !noted || remark) {
                (things ? tail : head).add(line);
            }
        }
        while (!head.isEmpty() && head.get(head.size() - 1).isBlank()) {
            head.remove(head.size() - 1);
        }
        return new ShelfFile(head, tail);
    }

    /** The whole text. */
    public Written with(List<String> remarks, List<Made> rows) {
        List<String> lines = new ArrayList<>(head);
        lines.addAll(remarks);
        lines.add("");
        List<Integer> first = new ArrayList<>();
        for (Made row : rows) {
            first.add(lines.size() + 1);
            lines.addAll(row.lines());
        }
        if (!tail.isEmpty()) {
            lines.add("");
            lines.addAll(tail);
        }
        return new Written(String.join("\n", lines) + "\n", first);
    }
}
