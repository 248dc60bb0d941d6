package org.cantonment.domain.common;

import java.time.LocalDate;

/** A day. */
public record DateValue(LocalDate date) implements SettingValue {
}
