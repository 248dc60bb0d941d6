package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** That a week was closed. */
public record Sealing(Id id, Optional<LocalDate> on, Optional<String> seal) {
}
