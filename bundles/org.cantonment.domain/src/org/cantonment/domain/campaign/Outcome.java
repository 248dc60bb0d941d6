package org.cantonment.domain.campaign;

/** How a game ended for a player. */
public enum Outcome {
    VICTORY, DRAW, DEFEAT, EITHER
}
