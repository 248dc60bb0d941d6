package org.cantonment.desk.turnout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/** What people call the entries of a list: by their own name, else unit and strength, numbered where that is not enough. */
final class EntryNames {
    private final Ruling ruling;
    private final Map<Id, String> names = new LinkedHashMap<>();

    private EntryNames(Ruling ruling) {
        this.ruling = ruling;
    }

    static Map<Id, String> of(ForceList list, Ruling ruling, Map<Id, Ruling> contingents) {
        Map<Id, String> all = new LinkedHashMap<>(in(list.body(), ruling));
        for (Contingent contingent : list.contingents()) {
            all.putAll(in(contingent.body(), contingents.getOrDefault(contingent.id(), ruling)));
        }
        return numbered(all);
    }

    private static Map<Id, String> in(Body body, Ruling ruling) {
        EntryNames names = new EntryNames(ruling);
        names.add(body);
        return names.names;
    }

    private void add(Body body) {
        body.entries().forEach(this::add);
        body.supports().forEach(this::add);
    }

    private void add(Entry entry) {
        names.put(entry.id(), name(entry));
        add(entry.body());
    }

    private String name(Entry entry) {
        if (!entry.label().isEmpty()) {
            return entry.label();
        }
        Choice choice = ruling.choice(entry.what());
        OptionalInt strength = entry.strength();
        boolean several = choice instanceof UnitView unit && (unit.steps().size() != 1
                || unit.steps().get(0).from() != unit.steps().get(0).to());
        return (entry.count() > 1 ? entry.count() + " " : "") + ruling.title(entry.what())
                + (strength.isPresent() && several ? " of " + strength.getAsInt() : "");
    }

    private static Map<Id, String> numbered(Map<Id, String> names) {
        Map<String, Integer> all = new LinkedHashMap<>();
        names.values().forEach(name -> all.merge(name, 1, Integer::sum));
        Map<String, Integer> seen = new LinkedHashMap<>();
        Map<Id, String> numbered = new LinkedHashMap<>();
        names.forEach((id, name) -> numbered.put(id, all.get(name) == 1 ? name
                : name + " (" + seen.merge(name, 1, Integer::sum) + ")"));
        return numbered;
    }
}
