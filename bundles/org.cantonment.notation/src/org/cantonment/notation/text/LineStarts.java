package org.cantonment.notation.text;

import java.util.Arrays;

/** Where the lines of a text begin. Lines end with LF, CR LF or CR. */
public final class LineStarts {

    private final int[] starts;
    private final int end;

    /** @param text the text */
    public LineStarts(CharSequence text) {
        int[] found = new int[Math.max(16, text.length() / 24)];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                if (count == found.length) {
                    found = Arrays.copyOf(found, count * 2);
                }
                found[count++] = i + 1;
            }
        }
        starts = Arrays.copyOf(found, count);
        end = text.length();
    }

    /** @return how many lines there are, at least 1 */
    public int count() {
        return starts.length;
    }

    /** @return the line of an offset, counted from 0 */
    public int lineOf(int offset) {
        int at = Arrays.binarySearch(starts, offset);
        return at >= 0 ? at : -at - 2;
    }

    /** @return where a line begins, counted from 0; the text's end for a line beyond the last */
    public int startOf(int line) {
        return line < starts.length ? starts[line] : end;
    }

    /** @return the column of an offset, counted from 0 in UTF-16 units */
    public int columnOf(int offset) {
        return offset - starts[lineOf(offset)];
    }
}
