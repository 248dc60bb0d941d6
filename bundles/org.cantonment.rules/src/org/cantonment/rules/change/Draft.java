package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Layout;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;

/** A change carried out: the actions that make it up, and the list after them. */
final class Draft {

    private final Board board;
    private final State state;
    private final List<Action> actions = new ArrayList<>();
    private final Map<Id, Place> standing = new HashMap<>();
    private final Map<Id, Place> opened = new HashMap<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<Put> puts = new ArrayList<>();
    private final Map<Part, Layout> layouts = new HashMap<>();
    private final Map<Part, Charges> charges = new HashMap<>();
    private ForceList list;

    /** What an edit puts in, before it is. */
    private record Wanted(Edit edit, AddUnit add, Place place) {
    }

    /** What an edit put in: so many, counted in one of what they stand in, at an entry. */
    record Put(Edit edit, Id entry, int count) {
    }

    Draft(Board board, State state) {
        this.board = board;
        this.state = state;
        this.list = board.list();
        Map<Group, List<Edit>> fates = new HashMap<>();
        Map<Place, Map<Edit, Integer>> adds = new HashMap<>();
        for (Edit edit : state.edits()) {
            if (edit.group() != null) {
                fates.computeIfAbsent(edit.group(), any -> new ArrayList<>()).add(edit);
            }
        }
        count(adds);
        for (Group group : board.groups()) {
            if (fates.containsKey(group)) {
                carry(group, fates.get(group));
            }
        }
        for (Place place : board.places()) {
            want(place, place.id(), adds);
        }
        put();
        for (Place place : board.places()) {
            formations(place, place.id(), adds);
        }
    }

    private void count(Map<Place, Map<Edit, Integer>> adds) {
        for (Edit edit : state.edits()) {
            if (edit.group() == null) {
                adds.computeIfAbsent(edit.place(), any -> new LinkedHashMap<>()).merge(edit, 1, Integer::sum);
            }
        }
    }

    ForceList list() {
        return list;
    }

    List<Action> actions() {
        return actions;
    }

    /** Where something that the change put in stands; null for what was written. */
    Place standing(Id entry) {
        return standing.get(entry);
    }

    /** The place in a formation that the change put in, or null. */
    Place opened(Id entry) {
        return opened.get(entry);
    }

    private void act(Action action) {
        actions.add(action);
        list = ListEdits.apply(list, List.of(action));
    }

    /** The copies of a group meet their fates from the first entry on. */
    private void carry(Group group, List<Edit> all) {
        List<Edit> fates = new ArrayList<>(all);
        boolean unpinned = fates.removeIf(edit -> edit.kind() == Kind.UNPIN);
        int from = 0;
        for (Node node : group.nodes()) {
            int to = Math.min(fates.size(), from + node.count());
            Map<Edit, Integer> counts = new LinkedHashMap<>();
            for (Edit edit : fates.subList(from, to)) {
                counts.merge(edit, 1, Integer::sum);
            }
            if (unpinned && count(counts, Kind.REMOVE) < node.count()) {
                act(new Unpin(node.entry().id()));
            }
            if (to > from) {
                carry(group, node, counts, node.count() - (to - from), unpinned);
            }
            from = to;
        }
    }

    private static int count(Map<Edit, Integer> counts, Kind kind) {
        int sum = 0;
        for (Map.Entry<Edit, Integer> some : counts.entrySet()) {
            sum += some.getKey().kind() == kind ? some.getValue() : 0;
        }
        return sum;
    }

    private void carry(Group group, Node node, Map<Edit, Integer> counts, int kept, boolean unpinned) {
        Id id = node.entry().id();
        counts.keySet().removeIf(edit -> edit.kind() == Kind.REMOVE);
        if (kept == 0 && counts.isEmpty()) {
            act(new RemoveEntry(id));
            return;
        }
        Edit here = kept > 0 ? null : counts.keySet().iterator().next();
        int stay = kept > 0 ? kept : counts.remove(here);
        if (stay != node.count()) {
            act(new SetCount(id, stay));
        }
        counts.forEach((edit, count) -> split(group, node, edit, count, unpinned));
        if (here != null && here.kind() == Kind.SUCCEED) {
            act(new ReplaceUnit(id, here.variant().unit().id(), OptionalInt.of(here.variant().strength())));
            options(id, List.of(), here.variant());
            puts.add(new Put(here, id, stay));
        } else if (here != null) {
            if (here.variant().strength() != node.strength()) {
                act(new SetStrength(id, here.variant().strength()));
            }
            options(id, node.entry().options(), here.variant());
        }
    }

    private void split(Group group, Node node, Edit edit, int count, boolean unpinned) {
        Id parent = group.above() == null ? group.part().id()
                : group.part().muster().nodes().get(node.parent()).entry().id();
        Optional<String> billet = unpinned ? Optional.empty() : node.entry().billet();
        wanted.add(new Wanted(edit, new AddUnit(parent, node.support(), billet, edit.variant().unit().id(),
                OptionalInt.of(edit.variant().strength()), count), group.home()));
    }

    /** Those with options first: what has none yet would be counted together with what is to have none. */
    private void put() {
        wanted.sort(Comparator.comparing(some -> some.edit().variant().options().isEmpty()));
        for (Wanted some : wanted) {
            Id id = ListEdits.idOf(list, some.add());
            standing.put(id, some.place());
            act(some.add());
            options(id, List.of(), some.edit().variant());
            puts.add(new Put(some.edit(), id, some.add().count()));
        }
        wanted.clear();
    }

    private void options(Id id, List<Taken> were, Variant variant) {
        TreeSet<String> names = new TreeSet<>();
        were.forEach(taken -> names.add(taken.option()));
        variant.options().forEach(taken -> names.add(taken.option()));
        for (String name : names) {
            int was = 0;
            for (Taken taken : were) {
                was += taken.option().equals(name) ? taken.count() : 0;
            }
            if (was != variant.times(name)) {
                act(new SetOption(id, name, variant.times(name)));
            }
        }
    }

    private void want(Place place, Id id, Map<Place, Map<Edit, Integer>> adds) {
        adds.getOrDefault(place, Map.of()).forEach((edit, count) -> {
            if (edit.kind() == Kind.ADD) {
                wanted.add(new Wanted(edit, new AddUnit(id, place.support(), Optional.empty(),
                        edit.variant().unit().id(), OptionalInt.of(edit.variant().strength()), count), place));
            }
        });
    }

    /** Formations in which something stands come first, so that each is told from the next. */
    private void formations(Place place, Id id, Map<Place, Map<Edit, Integer>> adds) {
        List<Place> formations = new ArrayList<>();
        adds.getOrDefault(place, Map.of()).forEach((edit, count) -> {
            for (int i = 0; i < count && edit.kind() == Kind.ADD_FORMATION; i++) {
                formations.add(board.place(edit, i));
            }
        });
        formations.sort((one, other) -> Boolean.compare(adds.containsKey(other), adds.containsKey(one)));
        for (Place formation : formations) {
            AddUnit add = new AddUnit(id, place.support(), Optional.empty(), formation.formation().id(),
                    OptionalInt.empty(), 1);
            Id fresh = ListEdits.idOf(list, add);
            standing.put(fresh, place);
            opened.put(fresh, formation);
            act(add);
            puts.add(new Put(formation.by(), fresh, 1));
            want(formation, fresh, adds);
            put();
            formations(formation, fresh, adds);
        }
    }

    List<Put> puts() {
        return puts;
    }

    /** A part of the changed list, counted and priced. */
    Muster muster(Part part) {
        return layout(part).muster();
    }

    /** A part of the changed list, laid out. */
    Layout layout(Part part) {
        return layouts.computeIfAbsent(part, some -> {
            Body body = list.body();
            for (Contingent contingent : list.contingents()) {
                body = contingent.id().equals(part.id()) ? contingent.body() : body;
            }
            return Layout.of(Muster.of(part.now(), part.id(), body), board.situation().cancel());
        });
    }

    /** The points that one of these moves beyond what it moves at the least. */
    long more(Put put) {
        Edit edit = put.edit();
        Part part = edit.group() != null ? edit.group().part() : edit.place().part();
        if (!part.fluid() || edit.kind() == Kind.ALTER) {
            return 0;
        }
        long plain = edit.variant() != null ? edit.variant().points() : edit.formation().points();
        long price = Charges.price(plain, added(part, put.entry()));
        long moved = edit.group() == null ? Math.max(0, price)
                : board.maker(part).prices().succeeded(edit.group().first(), price);
        return moved - edit.moved();
    }

    private long added(Part part, Id entry) {
        Charges charged = charges.computeIfAbsent(part, some -> new Charges(muster(some)));
        for (Node node : muster(part).nodes()) {
            if (node.entry().id().equals(entry)) {
                return charged.of(node.index());
            }
        }
        throw new IllegalStateException("Nothing stands at " + entry);
    }
}
