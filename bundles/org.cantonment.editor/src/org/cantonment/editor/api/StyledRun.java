package org.cantonment.editor.api;

import java.util.Objects;

/**
 * A stretch of text of one kind.
 *
 * @param offset where it begins, in characters from the start of the file
 * @param length how many characters, at least 1
 * @param kind what it is
 */
public record StyledRun(int offset, int length, TextKind kind) {

    /** Checks the place. */
    public StyledRun {
        Objects.requireNonNull(kind, "kind");
        if (offset < 0 || length < 1) {
            throw new IllegalArgumentException("offset " + offset + ", length " + length);
        }
    }

    /**
     * The first character behind it.
     *
     * @return offset plus length
     */
    public int end() {
        return offset + length;
    }
}
