package org.cantonment.domain.campaign;

/** What a scoring awards points for. */
public enum Reward {
    WIN, DRAW, LOSS, BYE, FORFEIT
}
