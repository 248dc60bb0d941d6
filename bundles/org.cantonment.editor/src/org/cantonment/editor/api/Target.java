package org.cantonment.editor.api;

import java.util.Objects;

/**
 * Where a name is given.
 *
 * @param uri the file, as a platform or file URI
 * @param offset where the name begins there, in characters
 * @param length how many characters the name has
 * @param label what is shown where there is a choice
 */
public record Target(String uri, int offset, int length, String label) {

    /** Refuses nulls. */
    public Target {
        Objects.requireNonNull(uri, "uri");
        Objects.requireNonNull(label, "label");
    }
}
