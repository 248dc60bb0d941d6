package org.cantonment.domain.common;

/** A name, as written. */
public record NameValue(String name) implements SettingValue {
}
