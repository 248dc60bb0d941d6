package org.cantonment.notation.text;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetOption;

/**
 * The actions of a mend in their order, each with the options that later ones give to what it brings: a new line of the
 * text is written with its options.
 */
final class MendSteps {

    /** One change of the text. */
    record Step(Action action, List<SetOption> options) {
    }

    private final List<Step> steps = new ArrayList<>();

    private MendSteps() {
    }

    static List<Step> of(List<Action> actions) {
        MendSteps all = new MendSteps();
        actions.forEach(all::take);
        return all.steps;
    }

    private void take(Action action) {
        if (action instanceof SetOption option) {
            for (int i = steps.size() - 1; i >= 0; i--) {
                if (brings(steps.get(i).action(), option.entry())) {
                    steps.get(i).options().removeIf(earlier -> earlier.option().equals(option.option()));
                    steps.get(i).options().add(option);
                    return;
                }
            }
        }
        steps.add(new Step(action, new ArrayList<>()));
    }

    private static boolean brings(Action action, Id entry) {
        if (action instanceof ReplaceUnit replace) {
            return replace.entry().equals(entry);
        }
        return action instanceof AddUnit add && is(entry.text(), add);
    }

    // The id of what is added is that of its place, a plus sign and what it is; a number follows if there is one such.
    private static boolean is(String id, AddUnit add) {
        String strength = add.strength().isPresent() ? "-" + add.strength().getAsInt() : "";
        String plain = add.parent().text() + "+" + (add.support() ? "support-" : "") + add.unit().text() + strength;
        return id.equals(plain) || id.startsWith(plain + "/") && id.indexOf('+', plain.length()) < 0;
    }
}
