package org.cantonment.notation.text;

/**
 * A stretch of text put in place of another.
 *
 * @param offset where the old stretch begins, in UTF-16 units from 0
 * @param length how long it is; 0 puts the new text in
 * @param text   what stands there afterwards
 */
public record TextChange(int offset, int length, String text) {

    /** @throws IllegalArgumentException if offset or length is below 0 */
    public TextChange {
        if (offset < 0 || length < 0) {
            throw new IllegalArgumentException("No place in a text: " + offset + ", " + length);
        }
    }

    /**
     * @param text    a text
     * @param changes changes to it that do not overlap, in any order, all places meant in the text as it is
     * @return the changed text
     */
    public static String apply(String text, java.util.List<TextChange> changes) {
        StringBuilder result = new StringBuilder(text);
        changes.stream().sorted(java.util.Comparator.comparingInt(TextChange::offset).reversed())
                .forEach(change -> result.replace(change.offset, change.offset + change.length, change.text));
        return result.toString();
    }
}
