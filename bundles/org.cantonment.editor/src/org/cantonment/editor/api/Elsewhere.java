package org.cantonment.editor.api;

import java.util.Objects;

/**
 * Another file that a fix changes.
 *
 * @param uri the file
 * @param text its text, in which the edits are counted; if it has another by then, the fix is not made
 */
public record Elsewhere(String uri, String text) {

    /** Refuses nulls. */
    public Elsewhere {
        Objects.requireNonNull(uri, "uri");
        Objects.requireNonNull(text, "text");
    }
}
