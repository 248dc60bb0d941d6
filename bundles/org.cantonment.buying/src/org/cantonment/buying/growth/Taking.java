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

/** A unit at a strength, with options. Those of one ruling are told apart by their keys. */
final class Taking implements Comparable<Taking> {

    private final UnitView unit;
    private final int strength;
    private final Map<String, Integer> options;
    private final String key;

    Taking(UnitView unit, int strength, Map<String, Integer> options) {
        this.unit = unit;
        this.strength = strength;
        this.options = Collections.unmodifiableMap(new TreeMap<>(options));
        key = unit.index() + "/" + strength + (options.isEmpty() ? "" : this.options.toString());
    }

    /** Without options. */
    static Taking of(UnitView unit, int strength) {
        return new Taking(unit, strength, Map.of());
    }

    UnitView unit() {
        return unit;
    }

    int strength() {
        return strength;
    }

    Map<String, Integer> options() {
        return options;
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
        return key;
    }

    Entry entry(Id line, int count) {
        List<Taken> taken = new ArrayList<>();
        options.forEach((name, times) -> taken.add(new Taken(times, name)));
        boolean only = unit.steps().size() == 1 && unit.steps().get(0).from() == unit.steps().get(0).to();
        return new Entry(line, Optional.empty(), count, unit.id(), only ? OptionalInt.empty() : OptionalInt.of(strength), taken,
                Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Taking taking && key.equals(taking.key);
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    @Override
    public int compareTo(Taking other) {
        int order = Integer.compare(unit.index(), other.unit.index());
        order = order != 0 ? order : Integer.compare(strength, other.strength);
        return order != 0 ? order : key.compareTo(other.key);
    }

    @Override
    public String toString() {
        return key;
    }
}
