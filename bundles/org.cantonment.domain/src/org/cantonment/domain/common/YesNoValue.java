package org.cantonment.domain.common;

/** Yes or no. */
public record YesNoValue(boolean yes) implements SettingValue {
}
