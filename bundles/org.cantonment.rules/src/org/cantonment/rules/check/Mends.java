package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.SupportView;
import org.cantonment.rules.view.UnitView;

/** The changes of a list that findings propose. */
final class Mends {

    private Mends() {
    }

    /** Strikes so many of an entry, or all of it. */
    static Mend take(Node node, int count) {
        if (count >= node.count()) {
            return new Mend("Strike " + Words.entry(node) + '.', List.of(new RemoveEntry(node.entry().id())));
        }
        return new Mend("Take out " + count + " of " + Words.entry(node) + '.',
                List.of(new SetCount(node.entry().id(), node.count() - count)));
    }

    /** Gives an entry another strength. */
    static Mend strength(Node node, int strength) {
        return new Mend("Take " + node.choice().title() + " at strength " + strength + ", "
                + Words.points(node.unit().points(strength)) + " each.",
                List.of(new SetStrength(node.entry().id(), strength)));
    }

    /** Puts a unit in the place of an entry, at the strength nearest to its own. */
    static Mend replace(Node node, UnitView unit) {
        int strength = unit.nearestStrength(node.strength());
        return new Mend("Take " + unit.title() + " of " + strength + " instead, "
                + Words.points(unit.points(strength)) + " each.",
                List.of(new ReplaceUnit(node.entry().id(), unit.id(), OptionalInt.of(strength))));
    }

    /** Leaves the billet of an entry open again. */
    static Mend unpin(Node node, String title) {
        return new Mend("Leave out " + node.entry().billet().orElseThrow() + "; it fits " + title + '.',
                List.of(new Unpin(node.entry().id())));
    }

    /** Moves an entry to a billet of another formation. */
    static Mend move(Node node, Node formation, String billet, String title) {
        return new Mend("Move it to " + title + " of " + Words.entry(formation) + '.',
                List.of(new MoveEntry(node.entry().id(), formation.entry().id(), Optional.of(billet))));
    }

    /** Adds so many of a choice to a place. */
    static Mend add(Case about, Id parent, boolean support, Optional<String> billet, Choice choice, int count) {
        OptionalInt strength = choice instanceof UnitView unit ? OptionalInt.of(unit.leastStrength())
                : OptionalInt.empty();
        String of = strength.isPresent() ? " of " + strength.getAsInt() : "";
        Action action = new AddUnit(parent, support, billet, choice.id(), strength, count);
        return new Mend("Add " + (count == 1 ? "" : count + " ") + choice.title() + of + ", "
                + Words.points(about.fills().cost(choice) * count) + '.', List.of(action));
    }

    /** Adds a unit of a strength to the list or contingent itself. */
    static Mend add(Case about, UnitView unit, int strength) {
        return new Mend("Add " + unit.title() + " of " + strength + ", " + Words.points(unit.points(strength)) + '.',
                List.of(new AddUnit(about.place(), false, Optional.empty(), unit.id(), OptionalInt.of(strength), 1)));
    }

    /** Adds the cheapest of those wanted where the list has a place for it; nothing if there is no such place. */
    static List<Mend> addSomewhere(Case about, Selector of, int count) {
        if (!about.ruling().hasFormations()) {
            Choice choice = about.fills().cheapest(of);
            return choice == null ? List.of()
                    : List.of(add(about, about.place(), false, Optional.empty(), choice, count));
        }
        List<Mend> mends = new ArrayList<>();
        for (Billeting billeting : about.layout().billetings()) {
            addInto(about, billeting, of, count, mends);
        }
        for (int i = of.nextChoice(0); i >= 0 && mends.isEmpty(); i = of.nextChoice(i + 1)) {
            Choice choice = about.ruling().choices().get(i);
            if (choice instanceof FormationView && about.mayTake(choice)) {
                mends.add(add(about, about.place(), false, Optional.empty(), choice, count));
            } else if (about.mayTake(choice)) {
                addSupport(about, choice, count, mends);
            }
        }
        return mends.isEmpty() ? List.of() : List.of(mends.get(0));
    }

    private static void addInto(Case about, Billeting billeting, Selector of, int count, List<Mend> mends) {
        FormationView formation = billeting.formation().formation();
        for (int b = 0; b < formation.billets().size(); b++) {
            Room room = billeting.room(b);
            if (billeting.placement().filled()[b] + count > room.span().max()) {
                continue;
            }
            Choice best = null;
            for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
                Choice choice = about.ruling().choices().get(i);
                if (room.of().takes(i) && about.mayTake(choice)
                        && (best == null || choice.leastPoints() < best.leastPoints())) {
                    best = choice;
                }
            }
            if (best != null) {
                mends.add(add(about, billeting.formation().entry().id(), false,
                        Optional.of(formation.billets().get(b).name()), best, count));
            }
        }
    }

    private static void addSupport(Case about, Choice choice, int count, List<Mend> mends) {
        for (SupportView support : about.ruling().supports()) {
            for (Room room : support.rooms()) {
                int filled = about.layout().supporting().placement().filled()[support.index()];
                long most = room.span().max() * about.layout().supporting().groups()[support.index()];
                if (room.of().takes(choice.index()) && filled + count <= most) {
                    mends.add(add(about, about.place(), true, Optional.of(support.id().name()), choice, count));
                }
            }
        }
    }
}
