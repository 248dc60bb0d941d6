package org.cantonment.editor.api;

import java.util.Objects;

/**
 * Something that may stand where somebody types.
 *
 * @param text what is put in
 * @param description what it stands for; may be empty
 * @param icon the name of an icon that {@link LanguageHost#icon(String)} knows; may be empty
 * @param offset where the stretch begins that it replaces, in characters from the start of the file
 */
public record Suggestion(String text, String description, String icon, int offset) {

    /** Refuses nulls. */
    public Suggestion {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(icon, "icon");
    }
}
