package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToLongFunction;

import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.LeastFill;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.rules.view.UnitView;

/** What putting in a formation leads to: what it costs at least to fill it, and what may come to stand in it. */
final class Filling {

    private final Ruling ruling;
    private final Situation situation;
    private final LeastFill costs;
    private final BitSet[] reach;

    /** @param least what a unit costs at the least */
    Filling(Ruling ruling, Situation situation, ToLongFunction<UnitView> least) {
        this.ruling = ruling;
        this.situation = situation;
        // With dispensations about, a formation may stay empty.
        this.costs = new LeastFill(ruling, situation, !situation.excuses().isEmpty(),
                unit -> Cost.of(Math.max(0, least.applyAsLong(unit)), 1),
                formation -> Cost.of(Math.max(0, Charges.least(formation, formation.points(), 0)), 0));
        this.reach = new BitSet[ruling.choices().size()];
        for (Choice choice : ruling.choices()) {
            reach(choice);
        }
    }

    boolean mayTake(Choice choice) {
        return situation.mayTake(choice);
    }

    /** What putting in one costs at least; {@link Cost#NEVER} for formations that can only be filled by themselves. */
    long cost(Choice choice) {
        return costs.of(choice);
    }

    /** Whether any of these may come to stand in the formation, at any depth. */
    boolean reaches(FormationView formation, BitSet some) {
        return reach[formation.index()].intersects(some);
    }

    /** How many of these may come to stand in one such formation; {@link Need#PLENTY} where nothing is known. */
    long capacity(FormationView formation, BitSet some) {
        long all = 0;
        for (BilletView billet : formation.billets()) {
            long most = 0;
            for (Room room : billet.rooms()) {
                for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
                    boolean deeper = reach[i].intersects(some);
                    most = Math.max(most, deeper ? Need.PLENTY : some.get(i) ? room.span().max() : 0);
                }
            }
            all = Math.min(Need.PLENTY, all + most);
        }
        return all;
    }

    /** The choices that some billet of a formation takes, and that may be taken now. */
    List<Choice> takes(FormationView formation) {
        List<Choice> all = new ArrayList<>();
        BitSet seen = direct(formation);
        for (int i = seen.nextSetBit(0); i >= 0; i = seen.nextSetBit(i + 1)) {
            all.add(ruling.choices().get(i));
        }
        return all;
    }

    private BitSet direct(FormationView formation) {
        BitSet seen = new BitSet();
        for (BilletView billet : formation.billets()) {
            for (Room room : billet.rooms()) {
                for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
                    seen.set(i, mayTake(ruling.choices().get(i)));
                }
            }
        }
        return seen;
    }

    private void reach(Choice from) {
        BitSet seen = new BitSet();
        List<Choice> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            Choice choice = open.remove(open.size() - 1);
            if (choice instanceof FormationView formation) {
                for (Choice inside : takes(formation)) {
                    if (!seen.get(inside.index())) {
                        seen.set(inside.index());
                        open.add(inside);
                    }
                }
            }
        }
        reach[from.index()] = seen;
    }
}
