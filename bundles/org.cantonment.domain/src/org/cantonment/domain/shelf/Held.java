package org.cantonment.domain.shelf;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/** So many of a piece, part, extra, bits or box, in a state if it is said. */
public record Held(int count, Id what, Optional<State> state) {
}
