package org.cantonment.desk.files;

import org.cantonment.notation.text.TextChange;

/** A new last line of a text. */
public final class LastLine {
    private LastLine() {
    }

    /** The change that adds it, ended as the text's other lines are. */
    public static TextChange add(String text, String line) {
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        boolean open = !text.isEmpty() && !text.endsWith("\n") && !text.endsWith("\r");
        return new TextChange(text.length(), 0, (open ? end : "") + line + end);
    }
}
