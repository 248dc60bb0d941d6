package org.cantonment.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.force.Taken;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Swap;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/** What a list needs on the table: the pieces and items of every entry, strengths and options reckoned in. */
public final class Requirements {

    private final Map<List<Id>, Long> wanted = new LinkedHashMap<>();

    private Requirements() {
    }

    /**
     * What a list needs, entry by entry in the order of the list; entries that need nothing are left out. A strength
     * that is not offered is taken as written. Counts are at most 1,000,000 each.
     *
     * @param contingents the rules of each contingent that has books of its own; the others go by the ruling
     */
    public static List<Requirement> of(Ruling ruling, ForceList list, Map<Id, Ruling> contingents) {
        List<Requirement> all = new ArrayList<>();
        gather(Muster.of(ruling, list.id(), list.body()), all);
        for (Contingent contingent : list.contingents()) {
            Ruling own = contingents.getOrDefault(contingent.id(), ruling);
            gather(Muster.of(own, contingent.id(), contingent.body()), all);
        }
        return List.copyOf(all);
    }

    private static void gather(Muster muster, List<Requirement> into) {
        for (Node node : muster.nodes()) {
            if (node.unit() != null && node.copies() > 0) {
                Requirements one = new Requirements();
                one.reckon(node, node.unit());
                one.wanted.forEach((anyOf, count) -> {
                    if (count > 0) {
                        into.add(new Requirement(node.entry().id(), Optional.of(node.entry().what()),
                                (int) Math.min(Muster.MOST, count * node.copies()), anyOf));
                    }
                });
            }
        }
    }

    private void reckon(Node node, UnitView unit) {
        for (Needs line : unit.needs()) {
            for (Need need : line.needs()) {
                add(need, line.each() ? node.strength() : 1);
            }
        }
        if (node.step() != null) {
            node.step().needs().forEach(need -> add(need, 1));
        }
        for (Taken taken : node.entry().options()) {
            OptionView option = unit.options().get(taken.option());
            if (option != null && taken.count() > 0) {
                option.adds().forEach(need -> add(need, taken.count()));
                for (Swap swap : option.swaps()) {
                    drop(swap.out(), taken.count());
                    add(swap.in(), taken.count());
                }
                option.drops().forEach(need -> drop(need, taken.count()));
            }
        }
    }

    private void add(Need need, long times) {
        wanted.merge(need.anyOf(), Math.min(Muster.MOST, need.count() * times), Long::sum);
    }

    /** Takes away from those needs first that name just the same, then from any that share a name. */
    private void drop(Need need, long times) {
        long left = take(need.anyOf(), need.count() * times);
        for (List<Id> other : List.copyOf(wanted.keySet())) {
            if (left > 0 && other.stream().anyMatch(need.anyOf()::contains)) {
                left = take(other, left);
            }
        }
    }

    private long take(List<Id> from, long count) {
        long there = wanted.getOrDefault(from, 0L);
        long taken = Math.min(there, count);
        if (taken > 0) {
            wanted.put(from, there - taken);
        }
        return count - taken;
    }
}
