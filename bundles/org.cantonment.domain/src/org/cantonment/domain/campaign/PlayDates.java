package org.cantonment.domain.campaign;

import java.time.LocalDate;

import org.cantonment.domain.common.Id;

/** When a round is played, both days included. */
public record PlayDates(Id id, LocalDate from, LocalDate to) {
}
