package org.cantonment.desk.start;

import java.util.ArrayList;
import java.util.List;

/** The clauses of one manifest header, such as {@code Require-Bundle}. */
final class Header {

    /** One clause: the name it begins with, and whether it may stay unfulfilled. */
    record Clause(String name, boolean optional) {
    }

    private Header() {
    }

    /**
     * Reads a header.
     *
     * @param value the header's value, or null if the manifest has no such header
     * @return its clauses in their order; none for null
     */
    static List<Clause> clauses(String value) {
        List<Clause> clauses = new ArrayList<>();
        for (String clause : split(value == null ? "" : value, ',')) {
            List<String> parts = split(clause, ';');
            if (parts.isEmpty()) {
                continue;
            }
            boolean optional = parts.stream()
                    .anyMatch(p -> p.replace("\"", "").replace(" ", "").equals("resolution:=optional"));
            // A clause may begin with several names that share what follows: 'a;b;version=1'.
            parts.stream().filter(p -> !p.contains("=")).forEach(p -> clauses.add(new Clause(p, optional)));
        }
        return clauses;
    }

    /** Splits where the separator stands outside quotes; blanks around the pieces and empty pieces go. */
    private static List<String> split(String text, char separator) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        boolean quoted = false;
        for (char c : (text + separator).toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            }
            if (c != separator || quoted) {
                piece.append(c);
            } else {
                if (!piece.toString().isBlank()) {
                    pieces.add(piece.toString().strip());
                }
                piece.setLength(0);
            }
        }
        return pieces;
    }
}
