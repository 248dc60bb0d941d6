package org.cantonment.domain.rules;

/** How an allowance is rounded; exact means not at all for a share, and full groups only for a per. */
public enum Rounding {
    EXACT, UP, DOWN
}
