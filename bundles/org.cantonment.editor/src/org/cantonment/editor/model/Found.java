package org.cantonment.editor.model;

import java.util.List;
import java.util.Objects;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Fix;

/**
 * A finding together with the ways to mend it.
 *
 * @param finding the finding, its place counted in the snapshot's text
 * @param fixes edits counted in the same text; the best first
 * @param further true if it comes from those who judge the meaning, false if from the language itself
 */
public record Found(Finding finding, List<Fix> fixes, boolean further) {

    /** Copies the fixes. */
    public Found {
        Objects.requireNonNull(finding, "finding");
        fixes = List.copyOf(fixes);
    }
}
