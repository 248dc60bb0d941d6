package org.cantonment.editor.api;

import java.util.Objects;

/**
 * One piece of text that takes the place of another.
 *
 * @param offset where the replaced text begins, in characters from the start of the file
 * @param length how many characters are replaced; 0 inserts
 * @param text what stands there afterwards
 */
public record TextChange(int offset, int length, String text) {

    /** Checks the place. */
    public TextChange {
        Objects.requireNonNull(text, "text");
        if (offset < 0 || length < 0) {
            throw new IllegalArgumentException("offset " + offset + ", length " + length);
        }
    }

    /**
     * The same change further down (or up) in the file.
     *
     * @param by characters to move by; may be negative
     * @return the moved change
     */
    public TextChange moved(int by) {
        return by == 0 ? this : new TextChange(offset + by, length, text);
    }

    /**
     * The first character behind the replaced text.
     *
     * @return offset plus length
     */
    public int end() {
        return offset + length;
    }
}
