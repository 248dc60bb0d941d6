package org.cantonment.domain.common;

/** What a setting may be set to. */
public sealed interface SettingValue permits
        NumberValue, TextValue, DateValue, YesNoValue, NameValue {
}
