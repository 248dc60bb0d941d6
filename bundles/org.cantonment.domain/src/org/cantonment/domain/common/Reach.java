package org.cantonment.domain.common;

import java.util.Optional;

/** From one moment to another, both included; at least one of the two is given. */
public record Reach(Optional<Moment> from, Optional<Moment> to) implements When {
}
