package org.cantonment.domain.shelf;

/** How far a piece has come at the bench. */
public enum State {
    BARE, PRIMED, PAINTED, CONVERTED
}
