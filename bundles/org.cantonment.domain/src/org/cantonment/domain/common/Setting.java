package org.cantonment.domain.common;

/** A value by name, for what a plug-in or a stated method takes. */
public record Setting(String name, SettingValue value) {
}
