package org.cantonment.domain.rules;

/** What a change of a layer claims to do; only loosen may relax a rule that a lower layer tightened. */
public enum Direction {
    CHANGE, TIGHTEN, LOOSEN
}
