package org.cantonment.domain.common;

import java.time.LocalDate;

/** A day. */
public record OnDate(LocalDate date) implements Moment {
}
