package org.cantonment.desk.shopping;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/** A list in one line. Names of its own stand in it only where somebody joins who bears them. */
final class ListWords {
    private final Ruling ruling;
    private final Set<String> hosts = new HashSet<>();

    private ListWords(ForceList list, Ruling ruling) {
        this.ruling = ruling;
        hosts(list.body().entries(), hosts);
        hosts(list.body().supports(), hosts);
    }

    /** "Causey squadron (Staff, 2 Tread troop of 3 with Mast); support: Barge". */
    static String of(ForceList list, Ruling ruling) {
        return new ListWords(list, ruling).words(list);
    }

    private String words(ForceList list) {
        String supports = entries(list.body().supports());
        return entries(list.body().entries()) + (supports.isEmpty() ? "" : "; support: " + supports);
    }

    private static void hosts(List<Entry> entries, Set<String> into) {
        for (Entry entry : entries) {
            entry.joins().ifPresent(into::add);
            hosts(entry.body().entries(), into);
        }
    }

    private String entries(List<Entry> entries) {
        return entries.stream().map(this::entry).collect(Collectors.joining(", "));
    }

    private String entry(Entry entry) {
        Choice choice = ruling.choice(entry.what());
        boolean several = choice instanceof UnitView unit && (unit.steps().size() != 1
                || unit.steps().get(0).from() != unit.steps().get(0).to());
        String inner = entries(entry.body().entries());
        return (entry.count() == 1 ? "" : entry.count() + " ") + ruling.title(entry.what())
                + (several && entry.strength().isPresent() ? " of " + entry.strength().getAsInt() : "")
                + (choice instanceof UnitView unit ? options(entry, unit) : "")
                + entry.alias().filter(hosts::contains).map(name -> " as " + name).orElse("")
                + entry.joins().map(name -> " joins " + name).orElse("")
                + (inner.isEmpty() ? "" : " (" + inner + ")");
    }

    private static String options(Entry entry, UnitView unit) {
        List<String> words = entry.options().stream().filter(taken -> unit.options().containsKey(taken.option()))
                .map(taken -> (taken.count() == 1 ? "" : taken.count() + " ") + unit.options().get(taken.option()).title()).toList();
        return words.isEmpty() ? "" : " with " + PlanText.and(words);
    }
}
