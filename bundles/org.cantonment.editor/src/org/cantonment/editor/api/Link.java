package org.cantonment.editor.api;

import java.util.Objects;

/**
 * A use of a name, and what it stands for.
 *
 * @param offset where the use begins, in characters from the start of the file
 * @param length how many characters it has
 * @param target where the name is given
 */
public record Link(int offset, int length, Target target) {

    /** Refuses nulls. */
    public Link {
        Objects.requireNonNull(target, "target");
    }

    /**
     * Whether a place in the text lies in this use.
     *
     * @param place characters from the start of the file
     * @return true from its first character to just behind its last
     */
    public boolean covers(int place) {
        return offset <= place && place <= offset + length;
    }
}
