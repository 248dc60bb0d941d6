package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** That a round's pairings were published. */
public record Published(Id id, Optional<LocalDate> on, Optional<String> seal) {
}
