package org.cantonment.domain.campaign;

/** What happened to pieces with no other player in it. */
public enum MoveVerb {
    LOST, FOUND, OPENED, BUILT, PRIMED, PAINTED, BOUGHT, MENDED, REBUILT, RECOVERED, MISSED, LOOSENED
}
