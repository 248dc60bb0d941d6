package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Requirements;

/** Asks whether changed lists can be fielded, and remembers what cannot: what was too much once is so every time. */
final class Stock {

    private final Board board;
    private final Fielding fielding;
    private final Map<List<Requirement>, Boolean> alone = new HashMap<>();
    private final List<Map<List<Id>, Long>> shortages = new ArrayList<>();

    Stock(Board board, Fielding fielding) {
        this.board = board;
        this.fielding = fielding;
    }

    /** Whether what was put in last can be fielded if there is nothing else. */
    boolean has(State state) {
        if (fielding == Fielding.ALL || state.edits().isEmpty()) {
            return true;
        }
        Edit last = state.edits().get(state.edits().size() - 1);
        if (last.variant() == null) {
            return true;
        }
        Part part = last.group() != null ? last.group().part() : last.place().part();
        List<Requirement> needs = board.maker(part).variants().needs(last.variant());
        return alone.computeIfAbsent(needs, some -> fielding.lacking(some).isEmpty());
    }

    /**
     * Entries of which one cannot stay as it is, or nothing.
     *
     * @param ask whether to find out; otherwise only what is remembered counts
     */
    Set<Id> lacking(ForceList list, boolean ask) {
        if (fielding == Fielding.ALL) {
            return Set.of();
        }
        List<Requirement> needs = Requirements.of(board.parts().get(0).now(), list, board.situation().contingents());
        Map<List<Id>, Long> sums = sums(needs, null);
        for (Map<List<Id>, Long> shortage : shortages) {
            if (shortage.entrySet().stream().allMatch(some -> sums.getOrDefault(some.getKey(), 0L) >= some.getValue())) {
                return entries(needs, shortage);
            }
        }
        Set<Id> lacking = ask ? fielding.lacking(needs) : Set.of();
        if (!lacking.isEmpty()) {
            shortages.add(sums(needs, lacking));
        }
        return lacking;
    }

    private static Map<List<Id>, Long> sums(List<Requirement> needs, Set<Id> entries) {
        Map<List<Id>, Long> sums = new HashMap<>();
        for (Requirement need : needs) {
            if (entries == null || entries.contains(need.entry())) {
                sums.merge(need.anyOf(), (long) need.count(), Long::sum);
            }
        }
        return sums;
    }

    private static Set<Id> entries(List<Requirement> needs, Map<List<Id>, Long> shortage) {
        Set<Id> entries = new TreeSet<>();
        for (Requirement need : needs) {
            if (shortage.containsKey(need.anyOf())) {
                entries.add(need.entry());
            }
        }
        return entries;
    }
}
