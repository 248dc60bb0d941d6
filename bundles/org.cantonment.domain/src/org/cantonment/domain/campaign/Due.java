package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** A date of a round. */
public record Due(Id id, DueWhat what, LocalDate date, Optional<LocalTime> time) {
}
