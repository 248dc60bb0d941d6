package org.cantonment.desk.roundup;

import java.util.ArrayList;
import java.util.List;

/** How wide a text is on a terminal, where wide letters take two columns and marks above letters none. */
final class TextWidth {
    private static final String CUT = "\u2026";

    private TextWidth() {
    }

    /** Columns that a text takes. */
    static int of(String text) {
        return text.codePoints().map(TextWidth::of).sum();
    }

    private static int of(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        return wide(c) ? 2 : 1;
    }

    // The blocks that Unicode Standard Annex 11 calls wide, as far as names of people and units use them.
    private static boolean wide(int c) {
        return c >= 0x1100 && (c <= 0x115F || c >= 0x2E80 && c <= 0xA4CF && c != 0x303F
                || c >= 0xAC00 && c <= 0xD7A3 || c >= 0xF900 && c <= 0xFAFF || c >= 0xFE30 && c <= 0xFE6F
                || c >= 0xFF00 && c <= 0xFF60 || c >= 0xFFE0 && c <= 0xFFE6 || c >= 0x1F300 && c <= 0x1FAFF
                || c >= 0x20000 && c <= 0x3FFFD);
    }

    /** The text in exactly so many columns: cut with a sign if it is too long, else filled with blanks on the right. */
    static String pad(String text, int width) {
        String fits = cut(text, width);
        return fits + " ".repeat(width - of(fits));
    }

    /** The text in exactly so many columns, blanks on the left. */
    static String padLeft(String text, int width) {
        String fits = cut(text, width);
        return " ".repeat(width - of(fits)) + fits;
    }

    /** The text in at most so many columns. */
    static String cut(String text, int width) {
        if (of(text) <= width) {
            return text;
        }
        StringBuilder kept = new StringBuilder();
        int used = 1;
        for (int c : text.codePoints().toArray()) {
            used += of(c);
            if (used > width) {
                break;
            }
            kept.appendCodePoint(c);
        }
        return kept.append(CUT).toString();
    }

    /** The text broken at blanks into lines of at most so many columns; a longer word is cut. */
    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (String word : text.strip().split("\\s+")) {
            String fits = cut(word, width);
            int wide = of(fits);
            if (used > 0 && used + 1 + wide > width) {
                lines.add(line.toString());
                line.setLength(0);
                used = 0;
            }
            if (used > 0) {
                line.append(' ');
                used++;
            }
            line.append(fits);
            used += wide;
        }
        lines.add(line.toString());
        return lines;
    }
}
