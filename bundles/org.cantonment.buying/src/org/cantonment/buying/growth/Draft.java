package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;

/**
 * A list on the way.
 *
 * @param troops its formations; each stands behind the one that it lies in
 * @param sides what stands beside them
 * @param have what all of it needs, by the numbers of the larder
 */
record Draft(List<Troop> troops, List<Side> sides, Load load, int[] have) {

    /** A unit that is taken as a support. */
    record Side(int support, int room, Taking taking) {
    }

    /**
     * What it comes to.
     *
     * @param points by the cards, what depends on the rest of the list left aside
     * @param money what it costs about, beyond what is there
     * @param traits what a wish says of what is in it, as bits
     * @param signature the same for drafts of the same formations
     * @param sums what the cuts count
     */
    record Load(long points, long money, long traits, long signature, long[] sums) {
    }

    /** The same for all drafts that are the same list. */
    String key() {
        List<String> beside = new ArrayList<>();
        sides.forEach(side -> beside.add(side.taking().key()));
        beside.sort(null);
        return inner(-1) + "+" + String.join(" ", beside);
    }

    private String inner(int parent) {
        List<String> keys = new ArrayList<>();
        for (int t = 0; t < troops.size(); t++) {
            if (troops.get(t).parent() == parent) {
                List<String> inner = new ArrayList<>();
                troops.get(t).fills().forEach(fill -> fill.units().forEach(one -> inner.add(one.key())));
                inner.sort(null);
                keys.add(troops.get(t).of().index() + "(" + String.join(" ", inner) + inner(t) + ")");
            }
        }
        keys.sort(null);
        return String.join("", keys);
    }

    static Map<Taking, Integer> units(Troop troop) {
        Map<Taking, Integer> units = new TreeMap<>();
        troop.fills().forEach(fill -> fill.units().forEach(one -> units.merge(one, 1, Integer::sum)));
        return units;
    }

    /** How many of each formation, and of each unit as it is taken, by their keys. */
    Map<String, Integer> counts() {
        Map<String, Integer> counts = new TreeMap<>();
        for (Troop troop : troops) {
            counts.merge("(" + troop.of().index(), 1, Integer::sum);
            units(troop).forEach((taking, count) -> counts.merge(taking.key(), count, Integer::sum));
        }
        sides.forEach(side -> counts.merge(side.taking().key(), 1, Integer::sum));
        return counts;
    }

    /** The list as a player would write it. */
    ForceList list(Id name, Brief brief) {
        Map<Taking, Integer> supports = new TreeMap<>();
        sides.forEach(side -> supports.merge(side.taking(), 1, Integer::sum));
        Body body = new Body(formations(-1, name), units(supports, name.child("support"), 0));
        return new ForceList(name, brief.situation().player(), OptionalInt.empty(), List.of(), Optional.empty(),
                brief.situation().points(), Joining.joined(brief.ruling(), body), List.of(), List.of(), List.of(), List.of());
    }

    private List<Entry> formations(int parent, Id under) {
        List<Entry> entries = new ArrayList<>();
        for (int t = 0; t < troops.size(); t++) {
            if (troops.get(t).parent() == parent) {
                Id line = under.line(entries.size() + 1);
                List<Entry> inner = new ArrayList<>(formations(t, line));
                inner.addAll(0, units(units(troops.get(t)), line, inner.size()));
                entries.add(new Entry(line, Optional.empty(), 1, troops.get(t).of().id(), OptionalInt.empty(), List.of(),
                        Optional.empty(), "", Optional.empty(), new Body(inner, List.of()), List.of()));
            }
        }
        return entries;
    }

    private static List<Entry> units(Map<Taking, Integer> takings, Id under, int had) {
        List<Entry> entries = new ArrayList<>();
        takings.forEach((one, count) -> entries.add(one.entry(under.line(had + entries.size() + 1), count)));
        return entries;
    }
}
