package org.cantonment.editor.model;

import java.util.Objects;

import org.cantonment.editor.api.Finding;

/**
 * A finding and where it comes from.
 *
 * @param finding the finding, its place counted in the snapshot's text
 * @param further true if it comes from those who judge the meaning, false if from the language itself
 */
public record Found(Finding finding, boolean further) {

    /** Refuses null. */
    public Found {
        Objects.requireNonNull(finding, "finding");
    }
}
