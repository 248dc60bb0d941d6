package org.cantonment.notation.text;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One way to mend a finding.
 *
 * @param label     what it does, in a few words
 * @param changes   the changes, empty if it is advice only
 * @param elsewhere the file that is changed, if it is not the finding's own
 */
public record TextMend(String label, List<TextChange> changes, Optional<Path> elsewhere) {

    /** Takes a copy of the changes. */
    public TextMend {
        changes = List.copyOf(changes);
    }

    /** A mend in the finding's own file. */
    public TextMend(String label, List<TextChange> changes) {
        this(label, changes, Optional.empty());
    }

    /** Whether it changes the finding's own file. */
    public boolean here() {
        return elsewhere.isEmpty() && !changes.isEmpty();
    }
}
