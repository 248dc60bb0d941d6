package org.cantonment.domain.campaign;

/** What a player can be let off. */
public sealed interface Excused permits FromRule, FromCheck, FromLimit {
}
