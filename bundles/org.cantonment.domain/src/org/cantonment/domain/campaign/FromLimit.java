package org.cantonment.domain.campaign;

/** The limit of points: of the round, or what the list sets itself and its contingents. */
public record FromLimit() implements Excused {
}
