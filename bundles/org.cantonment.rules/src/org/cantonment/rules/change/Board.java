package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** A written list laid out for changing it: who stands alike where, and everything that may be done. */
final class Board {

    /** Where entries of a list stand, by their order: at the same place come first those written first. */
    static final Comparator<Edit> ORDER = Comparator.comparingInt(Edit::position).thenComparingInt(Edit::id);

    /** Formations that a change puts into formations that it puts in, and so on. */
    static final int DEEPEST = 4;

    private final ForceList list;
    private final Situation situation;
    private final List<Part> parts = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final Map<Id, Group> byEntry = new HashMap<>();
    private final Map<Part, EditMaker> makers = new HashMap<>();
    private final Map<Edit, List<Place>> added = new HashMap<>();
    private final Map<FormationView, List<Rooms.Measure>> rooms = new IdentityHashMap<>();
    private final List<Edit> written = new ArrayList<>();
    private long curtailed = Long.MAX_VALUE;

    /** @param owned whether what a player owns is asked, too */
    Board(Ruling now, Ruling written, Situation situation, ForceList list, boolean owned) {
        this.list = list;
        this.situation = situation;
        add(part(list.id(), now, written, list.body(), 0));
        for (Contingent some : list.contingents()) {
            Ruling own = situation.contingents().get(some.id());
            Part last = parts.get(parts.size() - 1);
            add(part(some.id(), own == null ? now : own, own == null ? written : own, some.body(),
                    last.first() + last.muster().nodes().size() + 1));
        }
        Counter counter = new Counter();
        for (Part part : parts) {
            makers.put(part, new EditMaker(part, parts, situation, owned, counter));
            groups.stream().filter(group -> group.part() == part)
                    .forEach(group -> makers.get(part).fates(group, this.groups));
            places.stream().filter(place -> place.part() == part).forEach(makers.get(part)::adds);
        }
        groups.forEach(group -> this.written.addAll(group.fates()));
        places.forEach(place -> this.written.addAll(place.adds()));
        this.written.sort(ORDER);
    }

    private static Part part(Id id, Ruling now, Ruling written, Body body, int first) {
        return new Part(id, now, written, Muster.of(now, id, body), Muster.of(written, id, body), first);
    }

    /** How much room a formation of a part has. */
    List<Rooms.Measure> rooms(Part part, FormationView formation) {
        return rooms.computeIfAbsent(formation, some -> Rooms.of(some, part.now().choices()));
    }

    /** Numbers edits. */
    static final class Counter {

        private int next;

        int next() {
            return next++;
        }
    }

    private void add(Part part) {
        parts.add(part);
        int end = 2 * (part.first() + part.muster().nodes().size()) - 1;
        Place top = new Place(part, part.id(), false, null, null, null, 0, 1, end, new ArrayList<>());
        Place support = new Place(part, part.id(), true, null, null, null, 0, 1, end + 1, new ArrayList<>());
        places.add(top);
        places.add(support);
        Map<List<Object>, Group> alike = new HashMap<>();
        for (Node node : part.muster().nodes()) {
            if (node.choice() == null || node.copies() == 0) {
                continue;
            }
            Group above = node.parent() < 0 ? null : byEntry.get(part.muster().nodes().get(node.parent()).entry().id());
            Place home = above != null ? node.support() ? null : above.inside() : node.support() ? support : top;
            Group group = group(part, node, home, above, alike);
            group.take(node);
            byEntry.put(node.entry().id(), group);
            if (node.formation() != null) {
                open(part, node, group);
            }
        }
    }

    private Group group(Part part, Node node, Place home, Group above, Map<List<Object>, Group> alike) {
        Entry entry = node.entry();
        boolean named = entry.alias().isPresent() || entry.joins().isPresent() || entry.billet().isPresent();
        Group fresh = new Group(groups.size(), part, home, above);
        // Who pays for those beyond a number is told by the order of the entries, and a formula may ask for it.
        boolean ordered = node.unit() != null && !node.unit().dearer().isEmpty();
        Group group = named || ordered || node.formation() != null ? fresh : alike.computeIfAbsent(List.of(node.parent(),
                node.support(), entry.what(), entry.strength(), entry.options()), key -> fresh);
        if (group == fresh) {
            groups.add(group);
        }
        return group;
    }

    private void open(Part part, Node node, Group group) {
        Place place = new Place(part, node.entry().id(), false, node.formation(), group, null, 0, node.copies(),
                2 * (part.first() + node.end()) - 1, new ArrayList<>());
        group.open(place);
        places.add(place);
    }

    ForceList list() {
        return list;
    }

    Situation situation() {
        return situation;
    }

    List<Part> parts() {
        return parts;
    }

    /** Whether some price hangs on the rest of the list by a formula: then no edit tells by itself what it saves. */
    boolean fluid() {
        return parts.stream().anyMatch(Part::fluid);
    }

    List<Group> groups() {
        return groups;
    }

    /** The places of the written list. */
    List<Place> places() {
        return places;
    }

    /** The group of a written entry, or null. */
    Group group(Id entry) {
        return byEntry.get(entry);
    }

    /** Notes that a change of this cost was not followed any further, since it had become too large. */
    void curtail(long cost) {
        curtailed = Math.min(curtailed, cost);
    }

    /** What changes that were not followed cost at the least; {@link Long#MAX_VALUE} if all were. */
    long curtailed() {
        return curtailed;
    }

    /** All that may be done to the written list, in order. */
    List<Edit> written() {
        return written;
    }

    EditMaker maker(Part part) {
        return makers.get(part);
    }

    /** The place in the formation that an edit puts in for this time, counted from 0. */
    Place place(Edit adder, int ordinal) {
        List<Place> all = added.computeIfAbsent(adder, any -> new ArrayList<>());
        while (all.size() <= ordinal) {
            Place in = adder.place();
            Place place = new Place(in.part(), null, false, adder.formation(), in.above(), adder, all.size(), in.weight(),
                    in.position(), new ArrayList<>());
            if (place.depth() <= DEEPEST) {
                makers.get(in.part()).adds(place);
            }
            all.add(place);
        }
        return all.get(ordinal);
    }
}
