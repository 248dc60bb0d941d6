package org.cantonment.editor.model;

import org.cantonment.editor.api.TextChange;

/** Finds the one stretch in which two texts differ. */
public final class TextDifference {

    private TextDifference() {
    }

    /**
     * The smallest single change that makes one text of the other.
     *
     * @param before the text that is
     * @param after the text that is to be
     * @return the change, or null if both are equal
     */
    public static TextChange between(String before, String after) {
        int shorter = Math.min(before.length(), after.length());
        int head = 0;
        while (head < shorter && before.charAt(head) == after.charAt(head)) {
            head++;
        }
        if (head == before.length() && head == after.length()) {
            return null;
        }
        int tail = 0;
        while (tail < shorter - head
                && before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
            tail++;
        }
        return new TextChange(head, before.length() - tail - head, after.substring(head, after.length() - tail));
    }
}
