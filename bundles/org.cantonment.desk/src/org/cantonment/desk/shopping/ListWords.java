package org.cantonment.desk.shopping;

import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/** A list in one line. */
final class ListWords {
    private ListWords() {
    }

    /** "Causey squadron (Staff, 2 Tread troop of 3 with Mast); support: Barge". */
    static String of(ForceList list, Ruling ruling) {
        String supports = entries(list.body().supports(), ruling);
        return entries(list.body().entries(), ruling) + (supports.isEmpty() ? "" : "; support: " + supports);
    }

    private static String entries(List<Entry> entries, Ruling ruling) {
        return entries.stream().map(entry -> entry(entry, ruling)).collect(Collectors.joining(", "));
    }

    private static String entry(Entry entry, Ruling ruling) {
        Choice choice = ruling.choice(entry.what());
        boolean several = choice instanceof UnitView unit && (unit.steps().size() != 1
                || unit.steps().get(0).from() != unit.steps().get(0).to());
        String inner = entries(entry.body().entries(), ruling);
        return (entry.count() == 1 ? "" : entry.count() + " ") + ruling.title(entry.what())
                + (several && entry.strength().isPresent() ? " of " + entry.strength().getAsInt() : "")
                + (choice instanceof UnitView unit ? options(entry, unit) : "")
                + (inner.isEmpty() ? "" : " (" + inner + ")");
    }

    private static String options(Entry entry, UnitView unit) {
        List<String> words = entry.options().stream().filter(taken -> unit.options().containsKey(taken.option()))
                .map(taken -> (taken.count() == 1 ? "" : taken.count() + " ") + unit.options().get(taken.option()).title()).toList();
        return words.isEmpty() ? "" : " with " + PlanText.and(words);
    }
}
