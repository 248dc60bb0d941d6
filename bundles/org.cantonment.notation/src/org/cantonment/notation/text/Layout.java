package org.cantonment.notation.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets a book in order, line by line: two blanks of indent for each dot, one blank between words, none before a comma
 * or at a line's end, one empty line at the most. Remarks, quoted texts and the order of lines stay as they are; nothing
 * is aligned, so that a change to one line never touches another.
 */
public final class Layout {

    private Layout() {
    }

    /**
     * @param text a book, readable or not
     * @return the changes that set it in order; none if it is
     */
    public static List<TextChange> of(String text) {
        List<TextChange> changes = new ArrayList<>();
        LineStarts lines = new LineStarts(text);
        boolean emptyBefore = true;
        int from = text.startsWith("\uFEFF") ? 1 : 0;
        for (int i = 0; i < lines.count(); i++) {
            int start = Math.max(from, lines.startOf(i));
            int next = lines.startOf(i + 1);
            int end = next;
            while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
                end--;
            }
            String old = text.substring(start, end);
            String now = line(old);
            boolean empty = now.isEmpty();
            if (empty && emptyBefore && next > end) {
                changes.add(new TextChange(start, next - start, ""));
            } else if (!now.equals(old)) {
                changes.add(new TextChange(start, end - start, now));
            }
            emptyBefore = empty;
        }
        return changes;
    }

    /** @return one line, without its end, set in order */
    static String line(String old) {
        String content = old.strip();
        if (content.isEmpty()) {
            return "";
        }
        int dots = 0;
        while (dots < content.length() && content.charAt(dots) == '.') {
            dots++;
        }
        if (dots == 0 && content.charAt(0) == '#') {
            return old.stripTrailing();
        }
        StringBuilder line = new StringBuilder("  ".repeat(dots)).append(".".repeat(dots));
        words(content.substring(dots).strip(), line, dots > 0);
        return line.toString();
    }

    private static void words(String content, StringBuilder line, boolean blankFirst) {
        boolean blank = blankFirst;
        int i = 0;
        while (i < content.length()) {
            char c = content.charAt(i);
            if (isBlank(c)) {
                blank = true;
                i++;
                continue;
            }
            if (c == '#') {
                int blanks = i - content.substring(0, i).stripTrailing().length();
                line.append(" ".repeat(Math.max(1, blanks))).append(content, i, content.length());
                return;
            }
            int end = wordEnd(content, i);
            if (blank && c != ',' && line.length() > 0) {
                line.append(' ');
            }
            line.append(content, i, end);
            blank = c == ',';
            i = end;
        }
    }

    /** A quoted text, a comma, or all up to the next blank, comma, quote or remark. */
    private static int wordEnd(String content, int start) {
        char c = content.charAt(start);
        if (isQuote(c)) {
            int i = start + 1;
            while (i < content.length() && !isQuote(content.charAt(i))) {
                i++;
            }
            return Math.min(content.length(), i + 1);
        }
        if (c == ',') {
            return start + 1;
        }
        int i = start;
        while (i < content.length() && !isBlank(content.charAt(i)) && content.charAt(i) != ','
                && !isQuote(content.charAt(i)) && content.charAt(i) != '#') {
            i++;
        }
        return i;
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0';
    }

    private static boolean isQuote(char c) {
        return c == '"' || c == '\u201C' || c == '\u201D' || c == '\u201E';
    }
}
