package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** Scored so many of a tally. */
public record Scored(int amount, Id tally) implements Doing {
}
