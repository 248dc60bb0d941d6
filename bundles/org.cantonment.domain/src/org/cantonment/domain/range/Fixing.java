package org.cantonment.domain.range;

/** Whether what was built of a part can be built anew: never, between two games, or only at the bench. */
public enum Fixing {
    GLUED, LOOSE_BETWEEN_GAMES, LOOSE_AT_BENCH
}
