package org.cantonment.rules.guest;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.DateValue;
import org.cantonment.domain.common.NameValue;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.TextValue;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.rules.api.Parameter;

/** What a parameter takes, in words, and whether a value is one of that. */
public final class ParameterWords {

    private ParameterWords() {
    }

    /** "a number of percent from 0 to 100". */
    public static String takes(Parameter parameter) {
        String bounds = parameter.least().map(least -> " from " + number(least)).orElse("")
                + parameter.most().map(most -> " to " + number(most)).orElse("");
        return switch (parameter.sort()) {
            case COUNT -> "a whole number";
            case NUMBER -> "a number";
            case PERCENT -> "a number of percent";
            case TEXT -> "a text in quotes";
            case DATE -> "a day";
            case YES_NO -> "yes or no";
            case NAME -> "a name";
        } + bounds;
    }

    /** "50 percent if nothing is written", or that it must be written. */
    public static String preset(Parameter parameter) {
        return parameter.preset().map(value -> text(value) + " if nothing is written").orElse("must be written");
    }

    /** A value as it is written in a book. */
    public static String text(SettingValue value) {
        return value instanceof NumberValue number && number.percent() ? number(value) + " percent" : number(value);
    }

    private static String number(SettingValue value) {
        if (value instanceof NumberValue number) {
            BigDecimal plain = number.number().stripTrailingZeros();
            return plain.setScale(Math.max(0, plain.scale())).toPlainString();
        }
        if (value instanceof TextValue text) {
            return '"' + text.text() + '"';
        }
        if (value instanceof DateValue date) {
            return date.date().toString();
        }
        return value instanceof YesNoValue yes ? (yes.yes() ? "yes" : "no") : ((NameValue) value).name();
    }

    /** Whether a value is of the parameter's sort; its bounds are not asked. */
    public static boolean sort(Parameter parameter, SettingValue value) {
        return switch (parameter.sort()) {
            case COUNT -> value instanceof NumberValue number && !number.percent() && number.number().signum() >= 0
                    && number.number().stripTrailingZeros().scale() <= 0;
            case NUMBER -> value instanceof NumberValue number && !number.percent();
            case PERCENT -> value instanceof NumberValue number && number.percent();
            case TEXT -> value instanceof TextValue;
            case DATE -> value instanceof DateValue;
            case YES_NO -> value instanceof YesNoValue;
            case NAME -> value instanceof NameValue;
        };
    }

    /** The value itself if it is within the bounds, else the nearest that is. */
    public static SettingValue bounded(Parameter parameter, SettingValue value) {
        if (parameter.least().filter(least -> compare(value, least) < 0).isPresent()) {
            return parameter.least().get();
        }
        return parameter.most().filter(most -> compare(value, most) > 0).orElse(value);
    }

    private static int compare(SettingValue one, SettingValue other) {
        if (one instanceof NumberValue number && other instanceof NumberValue bound) {
            return number.number().compareTo(bound.number());
        }
        return one instanceof DateValue date && other instanceof DateValue bound ? date.date().compareTo(bound.date()) : 0;
    }

    /** What is wrong with a declaration, as the end of a sentence; empty if nothing is. */
    static Optional<String> fault(Parameter parameter) {
        boolean ordered = switch (parameter.sort()) {
            case COUNT, NUMBER, PERCENT, DATE -> true;
            default -> false;
        };
        if (!ordered && (parameter.least().isPresent() || parameter.most().isPresent())) {
            return Optional.of("with bounds, which only numbers and days have");
        }
        for (Optional<SettingValue> value : List.of(parameter.least(), parameter.most(), parameter.preset())) {
            if (value.isPresent() && !sort(parameter, value.get())) {
                return Optional.of("whose bounds or preset are not " + takes(new Parameter(parameter.name(), "", parameter.sort(),
                        Optional.empty(), Optional.empty(), Optional.empty(), "")));
            }
        }
        if (parameter.least().isPresent() && parameter.most().isPresent()
                && compare(parameter.least().get(), parameter.most().get()) > 0) {
            return Optional.of("whose least value is above its greatest");
        }
        return parameter.preset().filter(preset -> !bounded(parameter, preset).equals(preset))
                .map(preset -> "whose preset is out of its own bounds");
    }
}
