package org.cantonment.domain.range;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** How many there were, on a day if it is said. */
public record Stock(Id id, int count, Optional<LocalDate> on) {
}
