package org.cantonment.domain.common;

import java.math.BigDecimal;

/** A number, or a number of percent. */
public record NumberValue(BigDecimal number, boolean percent) implements SettingValue {
}
