package org.cantonment.domain.common;

/** A text. */
public record TextValue(String text) implements SettingValue {
}
