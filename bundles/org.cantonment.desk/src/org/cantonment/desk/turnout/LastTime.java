package org.cantonment.desk.turnout;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Before;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Turnout;

/**
 * Who stood where when a player's units were fielded last: by the turnouts of his lists of earlier rounds, each of which
 * keeps to those before it. A unit with a name of its own is the same in every list, any other is the same as the one that
 * comes as the first, second … of its kind.
 */
final class LastTime {

    /** What a unit needs something for, whichever list it stands in. */
    private record Place(String unit, List<Id> anyOf) {
    }

    private final Fielding fielding;
    private final Map<Place, Map<Id, Integer>> stood = new HashMap<>();

    private LastTime(Fielding fielding) {
        this.fielding = fielding;
    }

    /**
     * Looks back.
     *
     * @param terms how earlier lists were fielded, too
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    static Before of(Fielding fielding, ForceList list, List<Requirement> needs, Fielding.Terms terms, CancelToken cancel) {
        LastTime last = new LastTime(fielding);
        if (list.player().isPresent() && list.round().isPresent()) {
            int round = list.round().getAsInt();
            fielding.meanings().listsOf(list.player().get()).stream()
                    .filter(one -> one.round().isPresent() && one.round().getAsInt() < round)
                    .sorted(Comparator.comparingInt((ForceList one) -> one.round().getAsInt()).thenComparing(ForceList::id))
                    .forEach(earlier -> last.field(earlier, terms, cancel));
        }
        return last.before(list, needs);
    }

    private void field(ForceList list, Fielding.Terms terms, CancelToken cancel) {
        cancel.check();
        fielding.earlier(list, terms).ifPresent(asked -> {
            List<Requirement> needs = asked.answer().task().needs();
            Turnout turnout = Depot.of(fielding.catalogue(), asked.supply(), asked.answer().task().allowance())
                    .turnout(needs, before(list, needs), cancel);
            Map<Id, String> units = units(list);
            needs.forEach(need -> stood.remove(place(need, units)));
            for (Posting posting : turnout.postings()) {
                stood.computeIfAbsent(place(posting.need(), units), one -> new TreeMap<>())
                        .merge(posting.type(), posting.count(), Integer::sum);
            }
        });
    }

    private Before before(ForceList list, List<Requirement> needs) {
        Map<Id, String> units = units(list);
        Map<Requirement, Map<Id, Integer>> before = new LinkedHashMap<>();
        for (Requirement need : needs) {
            Map<Id, Integer> there = stood.get(place(need, units));
            if (there != null) {
                before.put(need, there);
            }
        }
        return new Before(before);
    }

    private static Place place(Requirement need, Map<Id, String> units) {
        return new Place(units.getOrDefault(need.entry(), need.entry().text()), need.anyOf());
    }

    /** For each entry what makes it the same in another list. */
    private static Map<Id, String> units(ForceList list) {
        Map<Id, String> units = new HashMap<>();
        Map<Id, Integer> seen = new HashMap<>();
        add(list.body(), units, seen);
        list.contingents().forEach(contingent -> add(contingent.body(), units, seen));
        return units;
    }

    private static void add(Body body, Map<Id, String> units, Map<Id, Integer> seen) {
        body.entries().forEach(entry -> add(entry, units, seen));
        body.supports().forEach(entry -> add(entry, units, seen));
    }

    private static void add(Entry entry, Map<Id, String> units, Map<Id, Integer> seen) {
        units.put(entry.id(), entry.alias().map(alias -> "as " + alias)
                .orElseGet(() -> entry.what().text() + " " + seen.merge(entry.what(), 1, Integer::sum)));
        add(entry.body(), units, seen);
    }
}
