package org.cantonment.rules.guest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.DateValue;
import org.cantonment.domain.common.NameValue;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.TextValue;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.api.Parameter;

/** Fits the settings of a campaign's line to the parameters of a check. */
final class SettingsReader {

    private final CheckUse use;

    SettingsReader(CheckUse use) {
        this.use = use;
    }

    Map<String, SettingValue> read(List<Parameter> parameters, List<Finding> wrong) {
        Map<String, SettingValue> written = new HashMap<>();
        for (Setting setting : use.settings()) {
            Optional<Parameter> parameter = parameters.stream().filter(known -> known.name().equals(setting.name()))
                    .findFirst();
            if (parameter.isEmpty()) {
                wrong.add(say("takes no setting " + setting.name() + '.', "It takes " + names(parameters) + '.'));
            } else if (!fits(parameter.get().sort(), setting.value())) {
                wrong.add(say("takes " + words(parameter.get().sort()) + " for " + setting.name() + '.',
                        parameter.get().about()));
            } else if (written.put(setting.name(), setting.value()) != null) {
                wrong.add(say("is given " + setting.name() + " twice.", "Strike one of the two."));
            }
        }
        for (Parameter parameter : parameters) {
            if (!written.containsKey(parameter.name()) && wrong.isEmpty()) {
                if (parameter.preset().isPresent()) {
                    written.put(parameter.name(), parameter.preset().get());
                } else {
                    wrong.add(say("needs a setting " + parameter.name() + '.', parameter.about()));
                }
            }
        }
        return written;
    }

    private static String names(List<Parameter> parameters) {
        return parameters.isEmpty() ? "none" : String.join(", ", parameters.stream().map(Parameter::name).toList());
    }

    private static boolean fits(Parameter.Sort sort, SettingValue value) {
        return switch (sort) {
            case COUNT -> value instanceof NumberValue number && !number.percent()
                    && number.number().stripTrailingZeros().scale() <= 0;
            case NUMBER -> value instanceof NumberValue number && !number.percent();
            case PERCENT -> value instanceof NumberValue number && number.percent();
            case TEXT -> value instanceof TextValue;
            case DATE -> value instanceof DateValue;
            case YES_NO -> value instanceof YesNoValue;
            case NAME -> value instanceof NameValue;
        };
    }

    private static String words(Parameter.Sort sort) {
        return switch (sort) {
            case COUNT -> "a whole number";
            case NUMBER -> "a number";
            case PERCENT -> "a number of percent";
            case TEXT -> "a text in quotes";
            case DATE -> "a day";
            case YES_NO -> "yes or no";
            case NAME -> "a name";
        };
    }

    private Finding say(String what, String mend) {
        return new Finding("check.setting", Severity.BREACH, use.id(), Optional.empty(), "The check " + use.name() + ' '
                + what, List.of(Mend.advice(mend)));
    }
}
