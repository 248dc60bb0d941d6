package org.cantonment.editor.api;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One way to mend a finding.
 *
 * @param label what it does, as a short sentence without a full stop
 * @param changes the edits, all counted in the text before any of them; they must not overlap
 * @param elsewhere the file that they change, if it is not the finding's own; it is opened and shown, and if what is put
 *            in leaves quotes empty, the caret stands between them
 */
public record Fix(String label, List<TextChange> changes, Optional<Elsewhere> elsewhere) {

    /** Copies the edits. */
    public Fix {
        Objects.requireNonNull(label, "label");
        changes = List.copyOf(changes);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException("A fix without an edit: " + label);
        }
    }

    /**
     * A fix in the finding's own file.
     *
     * @param label what it does, as a short sentence without a full stop
     * @param changes the edits, all counted in the text before any of them; they must not overlap
     */
    public Fix(String label, List<TextChange> changes) {
        this(label, changes, Optional.empty());
    }
}
