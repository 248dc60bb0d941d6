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
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.UnitView;

/**
 * A list on the way: one formation, units at strengths in its billets, supports.
 *
 * @param points what it costs by the cards, what depends on the rest of the list left aside
 * @param liked how many of its units the player likes
 */
record Draft(FormationView formation, Map<Taking, Integer> units, Map<Taking, Integer> supports, long points, int liked) {

    /** A unit at a strength. */
    record Taking(UnitView unit, int strength) implements Comparable<Taking> {

        long points() {
            return unit.points(strength);
        }

        @Override
        public int compareTo(Taking other) {
            int order = Integer.compare(unit.index(), other.unit.index());
            return order != 0 ? order : Integer.compare(strength, other.strength);
        }
    }

    static Draft of(FormationView formation) {
        return new Draft(formation, Map.of(), Map.of(), formation.points(), 0);
    }

    Draft with(List<Taking> more, boolean support, int likes) {
        Map<Taking, Integer> grown = new TreeMap<>(support ? supports : units);
        long sum = points;
        for (Taking one : more) {
            grown.merge(one, 1, Integer::sum);
            sum += one.points();
        }
        return new Draft(formation, support ? units : grown, support ? grown : supports, sum, liked + likes);
    }

    /** The same for all drafts that are the same list. */
    String key() {
        StringBuilder key = new StringBuilder(formation.id().text());
        units.forEach((one, count) -> key.append(' ').append(count).append('x').append(one.unit().index()).append('/')
                .append(one.strength()));
        supports.forEach((one, count) -> key.append(" +").append(count).append('x').append(one.unit().index()).append('/')
                .append(one.strength()));
        return key.toString();
    }

    /** The list as a player would write it. */
    ForceList list(Id name, Brief brief) {
        Id line = name.line(1);
        Body body = new Body(entries(units, line), List.of());
        Entry entry = new Entry(line, Optional.empty(), 1, formation.id(), OptionalInt.empty(), List.of(), Optional.empty(), "",
                Optional.empty(), body, List.of());
        return new ForceList(name, brief.situation().player(), OptionalInt.empty(), List.of(), Optional.empty(),
                brief.situation().points(), new Body(List.of(entry), entries(supports, name.child("support"))), List.of(),
                List.of(), List.of(), List.of());
    }

    private static List<Entry> entries(Map<Taking, Integer> takings, Id under) {
        List<Entry> entries = new ArrayList<>();
        takings.forEach((one, count) -> entries.add(new Entry(under.line(entries.size() + 1), Optional.empty(), count,
                one.unit().id(), OptionalInt.of(one.strength()), List.of(), Optional.empty(), "", Optional.empty(), Body.EMPTY,
                List.of())));
        return entries;
    }
}
