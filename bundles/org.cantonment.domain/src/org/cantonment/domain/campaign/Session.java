package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** One evening of a round. */
public record Session(Id id, String label, Optional<LocalDate> date, Optional<LocalTime> time) implements Titled {
}
