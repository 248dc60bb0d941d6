package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** Plays this role. */
public record TakesRole(Id role) implements Doing {
}
