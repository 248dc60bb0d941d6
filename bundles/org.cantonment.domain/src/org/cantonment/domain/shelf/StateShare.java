package org.cantonment.domain.shelf;

import java.util.OptionalInt;

/** How many of a holding are in this state; without a count all that no other share takes. */
public record StateShare(OptionalInt count, State state) {
}
