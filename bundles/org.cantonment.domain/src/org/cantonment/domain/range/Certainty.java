package org.cantonment.domain.range;

/** How sure a count is. */
public enum Certainty {
    KNOWN, GUESSED, UNKNOWN
}
