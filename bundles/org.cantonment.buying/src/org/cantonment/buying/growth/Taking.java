package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.view.UnitView;

/** A unit at a strength, with options. */
record Taking(UnitView unit, int strength, Map<String, Integer> options) implements Comparable<Taking> {

    Taking {
        options = Collections.unmodifiableMap(new TreeMap<>(options));
    }

    /** Without options. */
    static Taking of(UnitView unit, int strength) {
        return new Taking(unit, strength, Map.of());
    }

    /** The points by the card, what depends on the rest of the list left aside. */
    long points() {
        long points = unit.points(strength);
        for (Map.Entry<String, Integer> one : options.entrySet()) {
            points += unit.options().get(one.getKey()).cost().times(one.getValue());
        }
        return points;
    }

    /** The same for all that are alike. */
    String key() {
        return unit.index() + "/" + strength + (options.isEmpty() ? "" : options.toString());
    }

    Entry entry(Id line, int count) {
        List<Taken> taken = new ArrayList<>();
        options.forEach((name, times) -> taken.add(new Taken(times, name)));
        boolean only = unit.steps().size() == 1 && unit.steps().get(0).from() == unit.steps().get(0).to();
        return new Entry(line, Optional.empty(), count, unit.id(), only ? OptionalInt.empty() : OptionalInt.of(strength), taken, Optional.empty(), "",
                Optional.empty(), Body.EMPTY, List.of());
    }

    @Override
    public int compareTo(Taking other) {
        int order = Integer.compare(unit.index(), other.unit.index());
        order = order != 0 ? order : Integer.compare(strength, other.strength);
        return order != 0 ? order : options.toString().compareTo(other.options.toString());
    }
}
