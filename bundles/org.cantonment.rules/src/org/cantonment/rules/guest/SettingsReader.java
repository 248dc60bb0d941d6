package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Nearest;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.SetText;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.api.Parameter;

/** Fits the settings of a campaign's line to the parameters of a check. */
final class SettingsReader {

    private final CheckUse use;
    private final KnownCheck check;
    private final Map<String, SettingValue> values = new HashMap<>();
    private final List<Finding> wrong = new ArrayList<>();

    private SettingsReader(CheckUse use, KnownCheck check) {
        this.use = use;
        this.check = check;
    }

    /** @param wrong where to put what does not fit; then the values mean nothing */
    static Map<String, SettingValue> read(CheckUse use, KnownCheck check, List<Finding> wrong) {
        SettingsReader reader = new SettingsReader(use, check);
        reader.written();
        reader.presets();
        wrong.addAll(reader.wrong);
        return reader.values;
    }

    private void written() {
        for (Setting setting : use.settings()) {
            Optional<Parameter> parameter = check.parameter(setting.name());
            if (parameter.isEmpty()) {
                unknown(setting);
            } else if (values.put(setting.name(), setting.value()) != null) {
                say(place(setting), "is given " + setting.name() + " twice.", Mend.advice("Strike one of the two."));
            } else {
                fit(setting, parameter.get());
            }
        }
    }

    private void unknown(Setting setting) {
        List<Parameter> all = check.parameters();
        List<String> free = all.stream().map(Parameter::name)
                .filter(name -> use.settings().stream().noneMatch(other -> other.name().equals(name))).toList();
        List<Mend> mends = new ArrayList<>();
        Nearest.of(setting.name(), free).ifPresent(name -> mends.add(write(setting, name + ' '
                + ParameterWords.text(setting.value()))));
        mends.add(Mend.advice(all.isEmpty() ? "It takes no settings." : "It takes "
                + String.join(", ", all.stream().map(Parameter::name).toList()) + '.'));
        say(place(setting), "takes no setting " + setting.name() + '.', mends.toArray(Mend[]::new));
    }

    private void fit(Setting setting, Parameter parameter) {
        String takes = "takes " + ParameterWords.takes(parameter) + " for " + setting.name() + '.';
        if (!ParameterWords.sort(parameter, setting.value())) {
            say(place(setting), takes, parameter.preset().or(parameter::least)
                    .map(value -> write(setting, setting.name() + ' ' + ParameterWords.text(value)))
                    .orElse(Mend.advice(parameter.about())));
            return;
        }
        SettingValue nearest = ParameterWords.bounded(parameter, setting.value());
        if (!nearest.equals(setting.value())) {
            say(place(setting), takes, write(setting, setting.name() + ' ' + ParameterWords.text(nearest)));
        }
    }

    private void presets() {
        for (Parameter parameter : check.parameters()) {
            if (values.containsKey(parameter.name())) {
                continue;
            }
            if (parameter.preset().isPresent()) {
                values.put(parameter.name(), parameter.preset().get());
            } else {
                say(use.id(), "needs a setting " + parameter.name() + ": " + ParameterWords.takes(parameter) + '.',
                        needed(parameter));
            }
        }
    }

    /** Where the line has no settings yet and no severity, they stand right behind the name. */
    private Mend needed(Parameter parameter) {
        String added = parameter.name() + ' ' + parameter.least().map(ParameterWords::text).orElse("");
        if (use.settings().isEmpty() && use.severity().isEmpty() && parameter.least().isPresent()) {
            return new Mend("Write with " + added + '.', List.of(new SetText(use.id(), use.name() + " with " + added)));
        }
        return Mend.advice(parameter.about());
    }

    private Id place(Setting setting) {
        return use.id().child(setting.name());
    }

    private Mend write(Setting setting, String instead) {
        return new Mend("Write " + instead + '.', List.of(new SetText(place(setting), instead)));
    }

    private void say(Id at, String what, Mend... mends) {
        wrong.add(new Finding("check.setting", Severity.BREACH, at, Optional.of(use.id()),
                "The check " + use.name() + ' ' + what, List.of(mends)));
    }
}
