package org.cantonment.rules.change;

import java.util.ArrayList;
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
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Node;

/** A change carried out: the actions that make it up, and the list after them. */
final class Draft {

    private final Board board;
    private final State state;
    private final List<Action> actions = new ArrayList<>();
    private final Map<Id, Place> standing = new HashMap<>();
    private final Map<Id, Place> opened = new HashMap<>();
    private ForceList list;

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
            fill(place, place.id(), adds);
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
        put(new AddUnit(parent, node.support(), billet, edit.variant().unit().id(),
                OptionalInt.of(edit.variant().strength()), count), edit.variant(), group.home());
    }

    private void put(AddUnit add, Variant variant, Place place) {
        Id id = ListEdits.idOf(list, add);
        standing.put(id, place);
        act(add);
        options(id, List.of(), variant);
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

    /** Formations in which something stands come first, so that each is told from the next. */
    private void fill(Place place, Id id, Map<Place, Map<Edit, Integer>> adds) {
        Map<Edit, Integer> counts = adds.getOrDefault(place, Map.of());
        List<Place> formations = new ArrayList<>();
        counts.forEach((edit, count) -> {
            if (edit.kind() == Kind.ADD) {
                put(new AddUnit(id, place.support(), Optional.empty(), edit.variant().unit().id(),
                        OptionalInt.of(edit.variant().strength()), count), edit.variant(), place);
            } else {
                for (int i = 0; i < count; i++) {
                    formations.add(board.place(edit, i));
                }
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
            fill(formation, fresh, adds);
        }
    }
}
