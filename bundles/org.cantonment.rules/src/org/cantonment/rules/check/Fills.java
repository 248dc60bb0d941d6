package org.cantonment.rules.check;

import java.util.Arrays;

import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.Situation;

/**
 * What every choice costs at least, a formation with its compulsory billets filled as cheaply as can be. Reckoned once,
 * when first asked; formations that can only be filled by themselves cost {@link #NEVER}.
 */
public final class Fills {

    /** The cost of what cannot be filled. */
    static final long NEVER = Long.MAX_VALUE / 1_000_000;

    private final Ruling ruling;
    private final Situation situation;
    private long[] costs;

    /** Fills under a ruling, for the side of the situation. */
    public Fills(Ruling ruling, Situation situation) {
        this.ruling = ruling;
        this.situation = situation;
    }

    boolean mayTake(Choice choice) {
        return choice.permission().allowed() && (situation.side().isEmpty() || choice.sides().isEmpty()
                || choice.sides().contains(situation.side().get()));
    }

    /** What a choice costs at least. */
    long cost(Choice choice) {
        if (costs == null) {
            reckon();
        }
        return costs[choice.index()];
    }

    /** The cheapest of those that may be taken here; null if there is none that can be filled. */
    Choice cheapest(Selector of) {
        Choice best = null;
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            Choice choice = ruling.choices().get(i);
            if (mayTake(choice) && cost(choice) < (best == null ? NEVER : cost(best))) {
                best = choice;
            }
        }
        return best;
    }

    /** From above, until no formation becomes cheaper; each round settles at least one formation. */
    private void reckon() {
        costs = new long[ruling.choices().size()];
        Arrays.fill(costs, NEVER);
        int rounds = 1;
        for (Choice choice : ruling.choices()) {
            if (choice instanceof FormationView) {
                rounds++;
            } else {
                costs[choice.index()] = choice.leastPoints();
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

    private long filled(FormationView formation) {
        long cost = formation.points();
        for (BilletView billet : formation.billets()) {
            long least = NEVER;
            for (Room room : billet.rooms()) {
                least = Math.min(least, filled(room));
            }
            cost = Math.min(NEVER, cost + least);
        }
        return cost;
    }

    private long filled(Room room) {
        if (room.span().min() == 0) {
            return 0;
        }
        long least = NEVER;
        for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
            if (mayTake(ruling.choices().get(i))) {
                least = Math.min(least, costs[i]);
            }
        }
        return least >= NEVER / room.span().min() ? NEVER : least * room.span().min();
    }
}
