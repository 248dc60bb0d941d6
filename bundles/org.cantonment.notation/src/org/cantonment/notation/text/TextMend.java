package org.cantonment.notation.text;

import java.util.List;

/**
 * One way to mend a finding in its own file.
 *
 * @param label   what it does, in a few words
 * @param changes the changes, empty if it is advice only
 */
public record TextMend(String label, List<TextChange> changes) {

    /** Takes a copy of the changes. */
    public TextMend {
        changes = List.copyOf(changes);
    }
}
