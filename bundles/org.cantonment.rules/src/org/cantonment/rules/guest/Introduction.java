package org.cantonment.rules.guest;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.RuleCheck;

/** What a check says of itself before it is let in. */
final class Introduction {

    private static final Pattern NAME = Pattern.compile("\\p{Lu}[\\p{L}\\p{N}'-]*");

    private Introduction() {
    }

    /** What is wrong with it; null if nothing is. */
    static String fault(RuleCheck check) {
        String who = "A check of class " + check.getClass().getName();
        if (check.name() == null || !NAME.matcher(check.name()).matches()) {
            return who + " has the name '" + check.name() + "'; a name is one word with a capital.";
        }
        if (check.about() == null || check.about().isBlank()) {
            return who + " does not say what it checks.";
        }
        List<Parameter> parameters = check.parameters();
        Set<String> names = new HashSet<>();
        for (Parameter parameter : parameters == null ? List.<Parameter>of() : parameters) {
            if (parameter == null || parameter.name() == null || !NAME.matcher(parameter.name()).matches()
                    || parameter.sort() == null || parameter.preset() == null || !names.add(parameter.name())) {
                return who + " has a parameter without a proper name of its own, a sort, or a word on its preset.";
            }
        }
        return parameters == null ? who + " does not say which settings it takes." : null;
    }
}
