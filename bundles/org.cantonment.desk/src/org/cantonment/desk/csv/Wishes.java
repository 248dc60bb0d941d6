package org.cantonment.desk.csv;

import java.util.ArrayList;
import java.util.List;

/** Wishes of a shelf as cells of a table: the words of each without 'wish', then its lines without their first dot. */
final class Wishes {
    private static final String WORD = "wish ";

    private Wishes() {
    }

    /** A cell for each wish in a shelf's text; remarks are no part of them. */
    static List<String> in(String shelf) {
        List<List<String>> wishes = new ArrayList<>();
        boolean within = false;
        for (String line : shelf.lines().map(String::strip).toList()) {
            boolean inner = line.startsWith(".");
            if (line.startsWith(WORD)) {
                wishes.add(new ArrayList<>(List.of(line.substring(WORD.length()).strip())));
                within = true;
            } else if (inner && within) {
                wishes.get(wishes.size() - 1).add(line.substring(1).strip());
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                within = false;
            }
        }
        return wishes.stream().map(Cell::of).toList();
    }

    /** The lines of a shelf for a cell. */
    static List<String> lines(String cell) {
        List<String> lines = new ArrayList<>();
        for (String part : Cell.parts(cell)) {
            lines.add(lines.isEmpty() ? WORD + part : "  ." + (part.startsWith(".") ? "" : " ") + part);
        }
        return lines;
    }
}
