package org.cantonment.rules.api;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.cantonment.domain.common.DateValue;
import org.cantonment.domain.common.NameValue;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.TextValue;
import org.cantonment.domain.common.YesNoValue;

/**
 * A setting that somebody may write behind {@code with}. Said once, here: what is offered at the keyboard, what is found
 * wrong and the reference are all made of it.
 *
 * <pre>
 * Parameter.percent("Share", "Painted share", "How much of the list must be painted, by pieces.")
 *         .within(0, 100).presetTo(50)
 * </pre>
 *
 * @param name one word that begins with a capital: {@code Share}
 * @param label what people see; not blank
 * @param sort what may be written
 * @param least the least value, itself allowed; only for numbers and days
 * @param most the greatest value, itself allowed; only for numbers and days
 * @param preset what holds if nothing is written; without one the setting must be written
 * @param about what it means, with its unit, in a sentence for the organiser; not blank
 */
public record Parameter(String name, String label, Sort sort, Optional<SettingValue> least,
        Optional<SettingValue> most, Optional<SettingValue> preset, String about) {

    /** What may be written for a setting. */
    public enum Sort {
        /** A whole number, 0 or more. */
        COUNT,
        /** A number, decimals with a point. */
        NUMBER,
        /** A number of percent. */
        PERCENT,
        /** A text in quotes. */
        TEXT,
        /** A day, as in 2031-04-15. */
        DATE,
        /** Yes or no. */
        YES_NO,
        /** A name as it stands in the books, of a unit or a kind; who asks looks it up. */
        NAME
    }

    /** @throws NullPointerException if something is missing */
    public Parameter {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(sort, "sort");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(preset, "preset");
        Objects.requireNonNull(about, "about");
    }

    private static Parameter of(String name, String label, Sort sort, String about) {
        return new Parameter(name, label, sort, Optional.empty(), Optional.empty(), Optional.empty(), about);
    }

    /** A whole number from 0 to 1,000,000, unless it is bounded more narrowly. */
    public static Parameter count(String name, String label, String about) {
        return of(name, label, Sort.COUNT, about).within(0, 1_000_000);
    }

    /** A number. */
    public static Parameter number(String name, String label, String about) {
        return of(name, label, Sort.NUMBER, about);
    }

    /** A number of percent from 0 to 100, unless it is bounded otherwise. */
    public static Parameter percent(String name, String label, String about) {
        return of(name, label, Sort.PERCENT, about).within(0, 100);
    }

    /** A text. */
    public static Parameter text(String name, String label, String about) {
        return of(name, label, Sort.TEXT, about);
    }

    /** A day. */
    public static Parameter date(String name, String label, String about) {
        return of(name, label, Sort.DATE, about);
    }

    /** Yes or no. */
    public static Parameter yesNo(String name, String label, String about) {
        return of(name, label, Sort.YES_NO, about);
    }

    /** A name. */
    public static Parameter name(String name, String label, String about) {
        return of(name, label, Sort.NAME, about);
    }

    /** The same with bounds, both allowed themselves. */
    public Parameter within(long lowest, long highest) {
        return within(BigDecimal.valueOf(lowest), BigDecimal.valueOf(highest));
    }

    /** The same with bounds, both allowed themselves. */
    public Parameter within(BigDecimal lowest, BigDecimal highest) {
        return new Parameter(name, label, sort, Optional.of(number(lowest)), Optional.of(number(highest)), preset, about);
    }

    /** The same with bounds, both allowed themselves. */
    public Parameter within(LocalDate first, LocalDate last) {
        return new Parameter(name, label, sort, Optional.of(new DateValue(first)), Optional.of(new DateValue(last)), preset,
                about);
    }

    /** The same with a preset. */
    public Parameter presetTo(long value) {
        return presetTo(BigDecimal.valueOf(value));
    }

    /** The same with a preset. */
    public Parameter presetTo(BigDecimal value) {
        return presetTo(number(value));
    }

    /** The same with a preset. */
    public Parameter presetTo(LocalDate value) {
        return presetTo(new DateValue(value));
    }

    /** The same with a preset. */
    public Parameter presetTo(boolean value) {
        return presetTo(new YesNoValue(value));
    }

    /** The same with a preset: a text or a name, as is its sort. */
    public Parameter presetTo(String value) {
        return presetTo(sort == Sort.NAME ? new NameValue(value) : new TextValue(value));
    }

    private Parameter presetTo(SettingValue value) {
        return new Parameter(name, label, sort, least, most, Optional.of(value), about);
    }

    private SettingValue number(BigDecimal value) {
        return new NumberValue(value, sort == Sort.PERCENT);
    }
}
