package org.cantonment.domain.shelf;

/** What a player wishes of a unit or formation. */
public enum Taste {
    LIKES, NEVER, FIRST
}
