package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Option;
import org.cantonment.domain.rules.Swap;
import org.cantonment.model.ruleset.OptionAdds;
import org.cantonment.model.ruleset.OptionChoice;
import org.cantonment.model.ruleset.OptionClause;
import org.cantonment.model.ruleset.OptionCost;
import org.cantonment.model.ruleset.OptionCount;
import org.cantonment.model.ruleset.OptionDrops;
import org.cantonment.model.ruleset.OptionNeeds;
import org.cantonment.model.ruleset.OptionSwaps;
import org.cantonment.model.ruleset.RulesetPackage;

/** Reads an option, its clauses in any order. */
final class OptionReader {

    private final Reading reading;
    private final Phrases phrases;
    private final FactReader facts;

    OptionReader(Reading reading, Phrases phrases, FactReader facts) {
        this.reading = reading;
        this.phrases = phrases;
        this.facts = facts;
    }

    Optional<Fact> read(org.cantonment.model.ruleset.Option option, Id id) {
        if (option.getName() == null) {
            return Optional.empty();
        }
        OptionalInt max = OptionalInt.empty();
        Optional<Cost> cost = Optional.empty();
        List<Need> adds = new ArrayList<>();
        List<Swap> swaps = new ArrayList<>();
        List<Need> drops = new ArrayList<>();
        List<String> needs = new ArrayList<>();
        List<String> groups = new ArrayList<>();
        for (OptionClause clause : option.getClauses()) {
            if (clause instanceof OptionCount count) {
                max = phrases.positive(count, RulesetPackage.Literals.OPTION_COUNT__MAX, count.getMax());
            } else if (clause instanceof OptionCost said) {
                cost = facts.cost(said.getCost());
            } else if (clause instanceof OptionAdds more) {
                adds.addAll(facts.needs(more.getNeeds()));
            } else if (clause instanceof OptionSwaps swap) {
                facts.need(swap.getOut()).ifPresent(out -> facts.need(swap.getIn())
                        .ifPresent(in -> swaps.add(new Swap(out, in))));
            } else if (clause instanceof OptionDrops less) {
                drops.addAll(facts.needs(less.getNeeds()));
            } else if (clause instanceof OptionNeeds other) {
                other.getOptions().stream().map(org.cantonment.model.book.Named::getName)
                        .filter(java.util.Objects::nonNull).forEach(needs::add);
            } else if (clause instanceof OptionChoice choice && choice.getGroup() != null) {
                groups.add(choice.getGroup());
            }
        }
        reading.at(id, option);
        return Optional.of(new Option(id, option.getName(), Reading.label(option), max, cost, adds, swaps, drops, needs,
                groups, phrases.when(option.getWhen())));
    }
}
