package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** That a player's list for a round was accepted. */
public record Acceptance(Id id, Id player, int round, Optional<LocalDate> on, Optional<String> seal) {
}
