package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;

/** Carries out the actions of a mend on a list. */
public final class ListEdits {

    private ListEdits() {
    }

    /**
     * The list with the actions carried out, one after the other. A place that is not in the list is passed over, as are
     * actions that are only words or concern another text. What is added stands last in its place, under an id made of
     * that place's and what is added; one more of the same is counted there, unless it was changed since.
     */
    public static ForceList apply(ForceList list, List<Action> actions) {
        ForceList edited = list;
        for (Action action : actions) {
            edited = apply(edited, action);
        }
        return edited;
    }

    private static ForceList apply(ForceList list, Action action) {
        if (action instanceof RemoveEntry remove) {
            return each(list, entry -> entry.id().equals(remove.entry()) ? null : entry);
        }
        if (action instanceof SetCount set) {
            return change(list, set.entry(), entry -> set.count() <= 0 ? null : count(entry, set.count()));
        }
        if (action instanceof SetStrength set) {
            return change(list, set.entry(), entry -> unit(entry, entry.what(), OptionalInt.of(set.strength())));
        }
        if (action instanceof SetOption set) {
            return change(list, set.entry(), entry -> option(entry, set.option(), set.count()));
        }
        if (action instanceof ReplaceUnit replace) {
            return change(list, replace.entry(), entry -> bare(unit(entry, replace.unit(), replace.strength())));
        }
        if (action instanceof AddUnit add) {
            return add(list, add.parent(), add.support(), fresh(list, add));
        }
        if (action instanceof MoveEntry move) {
            return move(list, move);
        }
        if (action instanceof Unpin unpin) {
            return change(list, unpin.entry(), ListEdits::open);
        }
        return list;
    }

    /** What becomes of an entry; null strikes it. */
    private interface Step {
        Entry of(Entry entry);
    }

    private static ForceList change(ForceList list, Id id, Step step) {
        return each(list, entry -> entry.id().equals(id) ? step.of(entry) : entry);
    }

    private static ForceList each(ForceList list, Step step) {
        List<Contingent> contingents = new ArrayList<>();
        for (Contingent some : list.contingents()) {
            contingents.add(new Contingent(some.id(), some.label(), some.rules(), some.points(), each(some.body(), step),
                    some.notes()));
        }
        return new ForceList(list.id(), list.player(), list.round(), list.rules(), list.era(), list.points(),
                each(list.body(), step), contingents, list.borrowed(), list.brought(), list.notes());
    }

    private static Body each(Body body, Step step) {
        return body.entries().isEmpty() && body.supports().isEmpty() ? body
                : new Body(each(body.entries(), step), each(body.supports(), step));
    }

    private static List<Entry> each(List<Entry> entries, Step step) {
        List<Entry> kept = new ArrayList<>(entries.size());
        for (Entry entry : entries) {
            Entry changed = step.of(entry);
            if (changed != null) {
                Body body = each(changed.body(), step);
                kept.add(body == changed.body() ? changed : body(changed, body));
            }
        }
        return kept;
    }

    private static ForceList add(ForceList list, Id parent, boolean support, Entry fresh) {
        if (parent.equals(list.id())) {
            return new ForceList(list.id(), list.player(), list.round(), list.rules(), list.era(), list.points(),
                    with(list.body(), support, fresh), list.contingents(), list.borrowed(), list.brought(), list.notes());
        }
        List<Contingent> contingents = new ArrayList<>();
        for (Contingent some : list.contingents()) {
            Body body = some.id().equals(parent) ? with(some.body(), support, fresh) : some.body();
            contingents.add(new Contingent(some.id(), some.label(), some.rules(), some.points(), body, some.notes()));
        }
        ForceList allied = new ForceList(list.id(), list.player(), list.round(), list.rules(), list.era(), list.points(),
                list.body(), contingents, list.borrowed(), list.brought(), list.notes());
        return change(allied, parent, entry -> body(entry, with(entry.body(), support, fresh)));
    }

    private static ForceList move(ForceList list, MoveEntry move) {
        List<Entry> found = new ArrayList<>();
        ForceList without = change(list, move.entry(), entry -> {
            found.add(entry);
            return null;
        });
        if (found.isEmpty()) {
            return list;
        }
        Entry moved = found.get(0);
        return add(without, move.parent(), false, new Entry(moved.id(), move.billet(), moved.count(), moved.what(),
                moved.strength(), moved.options(), moved.alias(), moved.label(), moved.joins(), moved.body(),
                moved.notes()));
    }

    /** One more of what was added in the same way before is counted there. */
    private static Body with(Body body, boolean support, Entry fresh) {
        List<Entry> entries = new ArrayList<>(support ? body.supports() : body.entries());
        for (int i = 0; i < entries.size(); i++) {
            Entry there = entries.get(i);
            if (there.id().equals(fresh.id())) {
                entries.set(i, count(there, there.count() + fresh.count()));
                return support ? new Body(body.entries(), entries) : new Body(entries, body.supports());
            }
        }
        entries.add(fresh);
        return support ? new Body(body.entries(), entries) : new Body(entries, body.supports());
    }

    private static Entry fresh(ForceList list, AddUnit add) {
        return new Entry(idOf(list, add), add.billet(), add.count(), add.unit(), add.strength(), List.of(),
                Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
    }

    /** The id that what is added will have. */
    static Id idOf(ForceList list, AddUnit add) {
        String of = add.strength().isPresent() ? "-" + add.strength().getAsInt() : "";
        String text = add.parent().text() + "+" + (add.support() ? "support-" : "") + add.unit().text() + of;
        Id id = Id.of(text);
        for (int i = 2;; i++) {
            Entry there = find(list.body(), id);
            for (Contingent some : list.contingents()) {
                there = there == null ? find(some.body(), id) : there;
            }
            if (there == null || alike(there, add)) {
                return id;
            }
            id = Id.of(text + "/" + i);
        }
    }

    private static boolean alike(Entry there, AddUnit add) {
        return there.options().isEmpty() && there.body().entries().isEmpty() && there.body().supports().isEmpty()
                && there.what().equals(add.unit()) && there.billet().equals(add.billet())
                && there.strength().equals(add.strength());
    }

    private static Entry find(Body body, Id id) {
        Entry found = find(body.entries(), id);
        return found != null ? found : find(body.supports(), id);
    }

    private static Entry find(List<Entry> entries, Id id) {
        for (Entry entry : entries) {
            Entry found = entry.id().equals(id) ? entry : find(entry.body(), id);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static Entry count(Entry entry, int count) {
        return new Entry(entry.id(), entry.billet(), count, entry.what(), entry.strength(), entry.options(),
                entry.alias(), entry.label(), entry.joins(), entry.body(), entry.notes());
    }

    private static Entry unit(Entry entry, Id what, OptionalInt strength) {
        return new Entry(entry.id(), entry.billet(), entry.count(), what, strength, entry.options(), entry.alias(),
                entry.label(), entry.joins(), entry.body(), entry.notes());
    }

    private static Entry bare(Entry entry) {
        return new Entry(entry.id(), entry.billet(), entry.count(), entry.what(), entry.strength(), List.of(),
                entry.alias(), entry.label(), entry.joins(), entry.body(), entry.notes());
    }

    private static Entry open(Entry entry) {
        return new Entry(entry.id(), Optional.empty(), entry.count(), entry.what(), entry.strength(), entry.options(),
                entry.alias(), entry.label(), entry.joins(), entry.body(), entry.notes());
    }

    private static Entry body(Entry entry, Body body) {
        return new Entry(entry.id(), entry.billet(), entry.count(), entry.what(), entry.strength(), entry.options(),
                entry.alias(), entry.label(), entry.joins(), body, entry.notes());
    }

    private static Entry option(Entry entry, String option, int count) {
        List<Taken> taken = new ArrayList<>();
        boolean found = false;
        for (Taken some : entry.options()) {
            if (!some.option().equals(option)) {
                taken.add(some);
            } else if (!found && count > 0) {
                taken.add(new Taken(count, option));
            }
            found |= some.option().equals(option);
        }
        if (!found && count > 0) {
            taken.add(new Taken(count, option));
        }
        return new Entry(entry.id(), entry.billet(), entry.count(), entry.what(), entry.strength(), taken, entry.alias(),
                entry.label(), entry.joins(), entry.body(), entry.notes());
    }
}
