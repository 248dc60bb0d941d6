package org.cantonment.rules.muster;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Taken;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Swap;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.UnitView;

/** The pieces and items that one unit of an entry needs, its strength and options reckoned in. */
public final class Wants {

    private final Map<List<Id>, Long> wanted = new LinkedHashMap<>();

    private Wants() {
    }

    /** How many of any of these one copy of the entry needs, in the order of its rules; 0 for what an option took away. */
    public static Map<List<Id>, Long> of(Node node) {
        Wants one = new Wants();
        if (node.unit() != null) {
            one.reckon(node, node.unit());
        }
        return one.wanted;
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
