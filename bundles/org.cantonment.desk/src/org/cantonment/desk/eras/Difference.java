package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/**
 * What turns one list into another that was made of it: no step is told twice or taken back, and each line of the list is
 * touched but once, whatever way the search went.
 */
final class Difference {
    private final Ruling before;
    private final Ruling now;
    private final Map<Id, Entry> after = new HashMap<>();
    private final Map<String, List<Action>> out = new LinkedHashMap<>();
    private final Map<String, Integer> outCounts = new HashMap<>();
    private final List<Edit> others = new ArrayList<>();
    private final List<Edit> in = new ArrayList<>();

    private Difference(Ruling before, Ruling now) {
        this.before = before;
        this.now = now;
    }

    /** The edits: first what goes, then what becomes something else, then what comes. */
    static List<Edit> between(ForceList was, ForceList is, Ruling before, Ruling now) {
        Difference difference = new Difference(before, now);
        difference.index(is.body());
        is.contingents().forEach(contingent -> difference.index(contingent.body()));
        difference.old(was.body());
        was.contingents().forEach(contingent -> difference.old(contingent.body()));
        difference.fresh(is.id(), "", is.body());
        is.contingents().forEach(contingent -> difference.fresh(contingent.id(), contingent.title(), contingent.body()));
        List<Edit> edits = new ArrayList<>();
        difference.out.forEach((name, actions) -> {
            String words = many(difference.outCounts.get(name), name);
            edits.add(new Edit("Take out " + words, words + " out", actions));
        });
        edits.addAll(difference.others);
        edits.addAll(difference.in);
        return edits;
    }

    private void index(Body body) {
        all(body).forEach(entry -> {
            after.put(entry.id(), entry);
            index(entry.body());
        });
    }

    private static List<Entry> all(Body body) {
        List<Entry> all = new ArrayList<>(body.entries());
        all.addAll(body.supports());
        return all;
    }

    private void old(Body body) {
        for (Entry was : all(body)) {
            Entry is = after.get(was.id());
            if (is == null) {
                goes(was, was.count(), new RemoveEntry(was.id()));
            } else {
                changed(was, is);
                old(was.body());
            }
        }
    }

    private void goes(Entry entry, int count, Action action) {
        String name = name(before, entry);
        out.computeIfAbsent(name, any -> new ArrayList<>()).add(action);
        outCounts.merge(name, count, Integer::sum);
    }

    private void changed(Entry was, Entry is) {
        if (is.count() < was.count()) {
            goes(was, was.count() - is.count(), new SetCount(was.id(), is.count()));
        } else if (is.count() > was.count()) {
            String words = many(is.count() - was.count(), name(now, is));
            in.add(new Edit("Add " + words, words + " in", List.of(new SetCount(was.id(), is.count()))));
        }
        if (!is.what().equals(was.what())) {
            String name = many(is.count(), name(now, is)) + extras(is);
            String old = name(before, was);
            others.add(new Edit("Take " + name + " instead of " + old, name + " for " + old,
                    withOptions(new ReplaceUnit(was.id(), is.what(), is.strength()), is)));
            return;
        }
        if (!is.strength().equals(was.strength()) && is.strength().isPresent()) {
            String old = name(before, was);
            String title = many(is.count(), old);
            others.add(new Edit("Take " + title + " at strength " + is.strength().getAsInt(),
                    title + " at " + is.strength().getAsInt(),
                    List.of(new SetStrength(was.id(), is.strength().getAsInt()))));
        }
        options(was, is);
    }

    private void options(Entry was, Entry is) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        was.options().forEach(taken -> counts.merge(taken.option(), -taken.count(), Integer::sum));
        is.options().forEach(taken -> counts.merge(taken.option(), taken.count(), Integer::sum));
        counts.forEach((option, more) -> {
            if (more != 0) {
                int count = is.options().stream().filter(t -> t.option().equals(option)).mapToInt(Taken::count).sum();
                String what = many(Math.abs(more), option(is, option));
                others.add(new Edit((more < 0 ? "Take out " : "Add ") + what + (more < 0 ? " of " : " to ")
                        + name(now, is), what + (more < 0 ? " out" : " in"),
                        List.of(new SetOption(was.id(), option, count))));
            }
        });
    }

    private String option(Entry entry, String option) {
        Choice choice = now.choice(entry.what());
        return choice instanceof UnitView unit && unit.options().get(option) != null
                ? unit.options().get(option).title() : option;
    }

    /** What comes without options is given those that the entry has. */
    private static List<Action> withOptions(Action comes, Entry entry) {
        List<Action> actions = new ArrayList<>(List.of(comes));
        entry.options().forEach(taken -> actions.add(new SetOption(entry.id(), taken.option(), taken.count())));
        return actions;
    }

    private String extras(Entry entry) {
        return entry.options().isEmpty() ? "" : entry.options().stream()
                .map(taken -> many(taken.count(), option(entry, taken.option()))).collect(Collectors.joining(", ", " with ", ""));
    }

    // What a change has added bears a plus sign in its id.
    private void fresh(Id parent, String where, Body body) {
        body.entries().forEach(entry -> fresh(parent, where, false, entry));
        body.supports().forEach(entry -> fresh(parent, where, true, entry));
    }

    private void fresh(Id parent, String where, boolean support, Entry entry) {
        if (entry.id().text().indexOf('+') >= 0) {
            String words = many(entry.count(), name(now, entry)) + extras(entry);
            String to = support ? " as support" : where.isEmpty() ? "" : " to " + where;
            in.add(new Edit("Add " + words + to, words + " in", withOptions(new AddUnit(parent, support, entry.billet(),
                    entry.what(), entry.strength(), entry.count()), entry)));
        }
        String name = entry.label().isEmpty() ? now.title(entry.what()) : entry.label();
        fresh(entry.id(), name, entry.body());
    }

    /** With its strength where the unit comes at several. */
    private static String name(Ruling ruling, Entry entry) {
        String title = entry.label().isEmpty() ? ruling.title(entry.what()) : entry.label();
        Choice choice = ruling.choice(entry.what());
        OptionalInt strength = entry.strength();
        boolean several = choice instanceof UnitView unit && (unit.steps().size() != 1
                || unit.steps().get(0).from() != unit.steps().get(0).to());
        return title + (strength.isPresent() && several ? " of " + strength.getAsInt() : "");
    }

    private static String many(int count, String name) {
        return count == 1 ? name : count + " " + name;
    }
}
