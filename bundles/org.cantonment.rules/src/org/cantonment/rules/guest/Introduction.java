package org.cantonment.rules.guest;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.RuleCheck;

/** What a check says of itself before it is let in. Asks it everything once, so nothing it says later can differ. */
final class Introduction {

    private static final Pattern NAME = Pattern.compile("\\p{Lu}[\\p{L}\\p{N}'-]*");
    private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9-]*");
    private static final int LONGEST = 60;
    private static final int LONGEST_TEXT = 2_000;
    private static final int MOST = 100;

    private Introduction() {
    }

    /** @throws Nonsense if it does not say properly who it is */
    static KnownCheck hear(RuleCheck check, Origin origin) throws Nonsense {
        String name = check.name();
        if (name == null || name.length() > LONGEST || !NAME.matcher(name).matches()) {
            throw new Nonsense("has the name '" + Misdeeds.shortened(String.valueOf(name)) + "'; a name is one word with a capital, of at most "
                    + LONGEST + " letters");
        }
        return new KnownCheck(name, said(check.label(), "what it is called"), said(check.about(), "what it checks"),
                parameters(check.parameters()), kinds(check.findings()), origin, Optional.empty());
    }

    private static String said(String text, String what) throws Nonsense {
        if (text == null || text.isBlank() || text.length() > LONGEST_TEXT) {
            throw new Nonsense("does not say " + what + ", in at most " + LONGEST_TEXT + " letters");
        }
        return text;
    }

    private static List<FindingKind> kinds(List<FindingKind> said) throws Nonsense {
        List<FindingKind> kinds = copy(said, "which findings it may give");
        Set<String> codes = new HashSet<>();
        for (FindingKind kind : kinds) {
            if (!CODE.matcher(kind.code()).matches() || !codes.add(kind.code())) {
                throw new Nonsense("declares a finding with the code '" + Misdeeds.shortened(kind.code())
                        + "'; a code is of its own, in small letters, digits and hyphens");
            }
            said(kind.about(), "what its finding " + kind.code() + " means");
        }
        if (kinds.isEmpty()) {
            throw new Nonsense("does not say which findings it may give");
        }
        return kinds;
    }

    private static List<Parameter> parameters(List<Parameter> said) throws Nonsense {
        List<Parameter> parameters = copy(said, "which settings it takes");
        Set<String> names = new HashSet<>();
        for (Parameter parameter : parameters) {
            String name = parameter.name();
            if (name.length() > LONGEST || !NAME.matcher(name).matches()
                    || !names.add(name.toLowerCase(Locale.ROOT))) {
                throw new Nonsense("has a parameter '" + Misdeeds.shortened(name)
                        + "'; a parameter has a name of its own, one word with a capital");
            }
            said(parameter.label(), "what its parameter " + name + " is called");
            said(parameter.about(), "what its parameter " + name + " means");
            Optional<String> wrong = ParameterWords.fault(parameter);
            if (wrong.isPresent()) {
                throw new Nonsense("has a parameter " + name + ' ' + wrong.get());
            }
        }
        return parameters;
    }

    private static <T> List<T> copy(List<T> said, String what) throws Nonsense {
        List<T> copy = Foreign.copy(said, MOST);
        if (copy == null) {
            throw new Nonsense("does not say " + what + " in at most " + MOST + " parts, none of them missing");
        }
        return copy;
    }
}
