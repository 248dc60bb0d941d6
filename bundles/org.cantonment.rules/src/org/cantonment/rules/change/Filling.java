package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToLongFunction;

import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.rules.view.UnitView;

/** What putting in a formation leads to: what it costs at least to fill it, and what may come to stand in it. */
final class Filling {

    private final Ruling ruling;
    private final Situation situation;
    private final long[] costs;
    private final BitSet[] reach;

    /** @param least what a unit costs at the least */
    Filling(Ruling ruling, Situation situation, ToLongFunction<UnitView> least) {
        this.ruling = ruling;
        this.situation = situation;
        this.costs = new long[ruling.choices().size()];
        this.reach = new BitSet[costs.length];
        reckon(least);
        for (Choice choice : ruling.choices()) {
            reach(choice);
        }
    }

    boolean mayTake(Choice choice) {
        return choice.permission().allowed() && (situation.side().isEmpty() || choice.sides().isEmpty()
                || choice.sides().contains(situation.side().get()));
    }

    /** What putting in one costs at least; {@link Cost#NEVER} for formations that can only be filled by themselves. */
    long cost(Choice choice) {
        return costs[choice.index()];
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

    /** From above, until no formation becomes cheaper; each round settles at least one formation. */
    private void reckon(ToLongFunction<UnitView> least) {
        Arrays.fill(costs, Cost.NEVER);
        int rounds = 1;
        for (Choice choice : ruling.choices()) {
            if (choice instanceof UnitView unit) {
                costs[choice.index()] = Cost.of(Math.max(0, least.applyAsLong(unit)), 1);
            } else {
                rounds++;
            }
        }
        boolean changed = true;
        while (changed && rounds-- > 0) {
            changed = false;
            for (Choice choice : ruling.choices()) {
                if (choice instanceof FormationView formation) {
                    long cost = filled(formation);
                    changed |= cost < costs[choice.index()];
                    costs[choice.index()] = Math.min(cost, costs[choice.index()]);
                }
            }
        }
    }

    /** With dispensations about, a formation may stay empty. */
    private long filled(FormationView formation) {
        long cost = Cost.of(Math.max(0, Charges.least(formation, formation.points(), 0)), 0);
        if (!situation.excuses().isEmpty()) {
            return cost;
        }
        for (BilletView billet : formation.billets()) {
            long least = Cost.NEVER;
            for (Room room : billet.rooms()) {
                least = Math.min(least, filled(room));
            }
            cost = Math.min(Cost.NEVER, cost + least);
        }
        return cost;
    }

    private long filled(Room room) {
        if (room.span().min() == 0) {
            return 0;
        }
        long least = Cost.NEVER;
        for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
            if (mayTake(ruling.choices().get(i))) {
                least = Math.min(least, costs[i]);
            }
        }
        return least >= Cost.NEVER / room.span().min() ? Cost.NEVER : least * room.span().min();
    }
}
