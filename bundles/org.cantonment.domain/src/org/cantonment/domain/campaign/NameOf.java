package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** The name of a player. */
public record NameOf(Id id, Id player, String name) {
}
