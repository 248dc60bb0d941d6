package org.cantonment.rules.guest;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;

/**
 * What a check at hand said of itself when it came.
 *
 * @param name by which a campaign asks for it
 * @param label for people's eyes
 * @param about what it checks
 * @param parameters the settings it takes
 * @param findings what it may find
 * @param origin where it comes from
 * @param shutOut what it did, if it is not asked any more: the end of a sentence that begins with its name
 */
public record KnownCheck(String name, String label, String about, List<Parameter> parameters,
        List<FindingKind> findings, Origin origin, Optional<String> shutOut) {

    public KnownCheck {
        parameters = List.copyOf(parameters);
        findings = List.copyOf(findings);
    }

    /** Its parameter of this name. */
    public Optional<Parameter> parameter(String parameter) {
        return parameters.stream().filter(one -> one.name().equals(parameter)).findFirst();
    }

    /** The code under which people see one of its kinds of finding. */
    public String shown(FindingKind kind) {
        return "check." + name.toLowerCase(Locale.ROOT) + '.' + kind.code();
    }

    KnownCheck shut(Optional<String> how) {
        return new KnownCheck(name, label, about, parameters, findings, origin, how);
    }
}
