package org.cantonment.rules.api;

import java.util.Optional;

import org.cantonment.domain.common.SettingValue;

/**
 * A setting that a check takes.
 *
 * @param name one word with a capital
 * @param sort what may be written
 * @param preset what holds if nothing is written; without one the setting must be written
 * @param about what it means, with its unit and its range, in a sentence for the organiser
 */
public record Parameter(String name, Sort sort, Optional<SettingValue> preset, String about) {

    /** What may be written for a setting. */
    public enum Sort {
        /** A number. */
        NUMBER,
        /** A number of percent. */
        PERCENT,
        /** A text in quotes. */
        TEXT,
        /** A day. */
        DATE,
        /** Yes or no. */
        YES_NO,
        /** A name, as of a unit or a kind. */
        NAME
    }
}
