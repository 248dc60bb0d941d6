package org.cantonment.editor.api;

import java.util.List;
import java.util.Objects;

/**
 * One way to mend a finding.
 *
 * @param label what it does, as a short sentence without a full stop
 * @param changes the edits, all counted in the text before any of them; they must not overlap
 */
public record Fix(String label, List<TextChange> changes) {

    /** Copies the edits. */
    public Fix {
        Objects.requireNonNull(label, "label");
        changes = List.copyOf(changes);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("A fix without an edit: " + label);
        }
    }
}
