package org.cantonment.domain.rules;

/** How true a piece must be: the type itself, one of its family, or whatever the organiser lets stand for it. */
public enum Level {
    EXACT, KINDRED, STAND_IN
}
