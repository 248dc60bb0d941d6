package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.common.Validity;

/** One book of rules: a published one, or a layer of house rules over others. */
public record RuleSet(
        Id id, String label, List<Id> over, Validity when, List<Side> sides, List<Kind> kinds, List<Era> eras,
        List<Item> items, List<Unit> units, List<Formation> formations, List<Support> supports,
        List<Limit> limits, List<Likeness> likenesses, List<Change> changes, List<Withdrawal> withdrawals,
        List<RuleExample> examples, List<String> notes) implements Titled {

    public RuleSet {
        over = List.copyOf(over);
        sides = List.copyOf(sides);
        kinds = List.copyOf(kinds);
        eras = List.copyOf(eras);
        items = List.copyOf(items);
        units = List.copyOf(units);
        formations = List.copyOf(formations);
        supports = List.copyOf(supports);
        limits = List.copyOf(limits);
        likenesses = List.copyOf(likenesses);
        changes = List.copyOf(changes);
        withdrawals = List.copyOf(withdrawals);
        examples = List.copyOf(examples);
        notes = List.copyOf(notes);
    }
}
