package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Give the entry this strength. */
public record SetStrength(Id entry, int strength) implements Action {
}
