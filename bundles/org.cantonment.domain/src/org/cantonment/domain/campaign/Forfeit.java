package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** Gave the game to the other unplayed. */
public record Forfeit(Id other) implements Doing {
}
