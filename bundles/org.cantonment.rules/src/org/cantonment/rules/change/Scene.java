package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** A list in the midst of being changed, and the changes that can be made to it, with what they move. */
final class Scene {

    private static final int ALL_STRENGTHS = 6;

    private final Ruling now;
    private final Ruling written;
    private final Situation situation;
    private final Muster muster;
    private final Map<Id, Node> byEntry = new HashMap<>();

    /** @param written the rules by which the list was written, for what removing moves */
    Scene(Ruling now, Ruling written, Situation situation, ForceList list) {
        this.now = now;
        this.written = written;
        this.situation = situation;
        this.muster = Muster.of(now, list.id(), list.body());
        muster.nodes().forEach(node -> byEntry.put(node.entry().id(), node));
    }

    Ruling now() {
        return now;
    }

    Muster muster() {
        return muster;
    }

    Id list() {
        return muster.id();
    }

    List<Node> nodes() {
        return muster.nodes();
    }

    /** The node of an entry; null if there is none. */
    Node node(Id entry) {
        return byEntry.get(entry);
    }

    boolean mayTake(Choice choice) {
        return choice.permission().allowed() && (situation.side().isEmpty() || choice.sides().isEmpty()
                || choice.sides().contains(situation.side().get()));
    }

    /** Whether the entry was written and not added by a change. */
    static boolean own(Node node) {
        return node.entry().id().text().indexOf('+') < 0;
    }

    /** The points of all that changes added, which nothing takes out again. */
    long pointsAdded() {
        long points = 0;
        for (Node node : muster.nodes()) {
            points += own(node) ? Math.min(0, node.points()) : node.points();
        }
        return points;
    }

    /** How many of the list's units one of the entry is. */
    private static long weight(Node node) {
        return node.count() == 0 ? 0 : node.copies() / node.count();
    }

    /** Takes out one of an entry, or all of it; nothing for what a change added. */
    List<Edit> remove(Node node, boolean all) {
        if (!own(node) || node.count() == 0) {
            return List.of();
        }
        int gone = all ? node.count() : 1;
        Action action = gone == node.count() ? new RemoveEntry(node.entry().id())
                : new SetCount(node.entry().id(), node.count() - gone);
        long moved = 0;
        long units = 0;
        for (Node inside : muster.nodes().subList(node.index(), node.end())) {
            long copies = inside.copies() / node.count() * gone;
            moved += own(inside) ? oldPrice(inside.entry()) * copies : 0;
            units += inside.unit() == null ? 0 : copies;
        }
        return List.of(new Edit(List.of(action), Math.max(0, moved), (int) units));
    }

    /** What one cost when it was written; if it could not be taken then, what it costs now. */
    private long oldPrice(Entry entry) {
        Choice then = written.choice(entry.what());
        Choice choice = then != null && !then.permission().outOfEra() ? then : now.choice(entry.what());
        return choice instanceof UnitView unit ? price(unit, entry) : choice == null ? 0 : choice.leastPoints();
    }

    private static long price(UnitView unit, Entry entry) {
        int strength = entry.strength().orElseGet(unit::leastStrength);
        Step step = unit.step(strength);
        long points = step == null ? unit.points(unit.nearestStrength(strength)) : step.points(strength);
        for (Taken taken : entry.options()) {
            OptionView option = unit.options().get(taken.option());
            points += option == null || taken.count() <= 0 ? 0 : option.cost().times(taken.count());
        }
        return points;
    }

    /** Puts a unit's successor in its place. */
    List<Edit> succeed(Node node) {
        if (node.unit() == null || !own(node)) {
            return List.of();
        }
        Optional<Id> next = node.unit().permission().successor();
        if (next.isEmpty() || !(now.choice(next.get()) instanceof UnitView unit) || !mayTake(unit)) {
            return List.of();
        }
        boolean difference = node.unit().successor().filter(line -> line.difference()).isPresent();
        List<Edit> edits = new ArrayList<>();
        for (int strength : strengths(unit)) {
            long old = oldPrice(node.entry());
            long moved = difference ? Math.abs(unit.points(strength) - old) : old + unit.points(strength);
            edits.add(new Edit(List.of(new ReplaceUnit(node.entry().id(), unit.id(), OptionalInt.of(strength))),
                    Math.max(0, moved) * node.copies(), (int) node.copies() * (difference ? 1 : 2)));
        }
        return edits;
    }

    /** Strengths worth trying: all of a short step, else its ends. */
    static Set<Integer> strengths(UnitView unit) {
        Set<Integer> strengths = new TreeSet<>();
        for (Step step : unit.steps()) {
            if (step.to() - step.from() <= ALL_STRENGTHS) {
                for (int strength = step.from(); strength <= step.to(); strength++) {
                    strengths.add(strength);
                }
            } else {
                strengths.add(step.from());
                strengths.add(step.to());
            }
        }
        return strengths;
    }

    /** Gives one of an entry another strength, or all of it where it has options. */
    List<Edit> strength(Node node, int strength) {
        if (node.unit() == null || strength < 1 || node.unit().step(strength) == null || strength == node.strength()) {
            return List.of();
        }
        Entry entry = node.entry();
        Step step = node.step();
        long was = step == null ? oldPrice(entry) : step.points(node.strength());
        long each = Math.abs(node.unit().points(strength) - was);
        if (node.count() == 1 || !entry.options().isEmpty() || node.parent() >= 0 && node.support()) {
            return List.of(new Edit(List.of(new SetStrength(entry.id(), strength)), each * node.copies(),
                    (int) node.copies()));
        }
        Id parent = node.parent() < 0 ? list() : muster.nodes().get(node.parent()).entry().id();
        return List.of(new Edit(List.of(new SetCount(entry.id(), node.count() - 1), new AddUnit(parent, node.support(),
                entry.billet(), entry.what(), OptionalInt.of(strength), 1)), each * weight(node), (int) weight(node)));
    }

    /** Takes an option so many times. */
    List<Edit> option(Node node, String name, int count) {
        OptionView option = node.unit() == null ? null : node.unit().options().get(name);
        long was = 0;
        for (Taken taken : node.entry().options()) {
            was += taken.option().equals(name) ? taken.count() : 0;
        }
        long moved = option == null ? 0
                : Math.abs(option.cost().times((int) was) - (count == 0 ? 0 : option.cost().times(count)));
        return List.of(new Edit(List.of(new SetOption(node.entry().id(), name, count)), moved * node.copies(),
                (int) node.copies()));
    }

    /** Adds one of a choice to a place, at every strength worth trying and one more. */
    List<Edit> add(Id parent, boolean support, Choice choice, int strength) {
        if (!mayTake(choice)) {
            return List.of();
        }
        Node formation = byEntry.get(parent);
        long copies = formation == null ? 1 : formation.copies();
        if (!(choice instanceof UnitView unit)) {
            return List.of(new Edit(List.of(new AddUnit(parent, support, Optional.empty(), choice.id(),
                    OptionalInt.empty(), 1)), Math.max(0, choice.leastPoints()) * copies, 0));
        }
        Set<Integer> strengths = strengths(unit);
        if (strength > 0 && unit.step(strength) != null) {
            strengths.add(strength);
        }
        List<Edit> edits = new ArrayList<>();
        for (int some : strengths) {
            edits.add(new Edit(List.of(new AddUnit(parent, support, Optional.empty(), unit.id(), OptionalInt.of(some), 1)),
                    Math.max(0, unit.points(some)) * copies, (int) copies));
        }
        return edits;
    }
}
