package org.cantonment.rules.view;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What every choice takes at the least, whatever is counted: a unit by itself, a formation with its compulsory billets
 * filled with what takes least. What can only be filled by itself, or not at all, takes {@link #NEVER}.
 */
public final class LeastFill {

    /** More than anything takes. */
    public static final long NEVER = Long.MAX_VALUE / 4;

    private final Ruling ruling;
    private final Situation situation;
    private final boolean mayStayEmpty;
    private final long[] least;

    /**
     * Reckons from above, until no formation takes less; each round settles at least one formation.
     *
     * @param mayStayEmpty whether compulsory billets need not be filled
     * @param units what a unit takes, from 0
     * @param formations what a formation takes with nothing in it, from 0
     */
    public LeastFill(Ruling ruling, Situation situation, boolean mayStayEmpty, ToLongFunction<UnitView> units,
            ToLongFunction<FormationView> formations) {
        this.ruling = ruling;
        this.situation = situation;
        this.mayStayEmpty = mayStayEmpty;
        least = new long[ruling.choices().size()];
        Arrays.fill(least, NEVER);
        int rounds = 1;
        for (Choice choice : ruling.choices()) {
            if (choice instanceof UnitView unit) {
                least[choice.index()] = units.applyAsLong(unit);
            } else {
                rounds++;
            }
        }
        boolean lowered = true;
        while (lowered && rounds-- > 0) {
            lowered = lower(formations);
        }
    }

    private boolean lower(ToLongFunction<FormationView> formations) {
        boolean lowered = false;
        for (Choice choice : ruling.choices()) {
            if (choice instanceof FormationView formation) {
                long filled = filled(formation, formations.applyAsLong(formation));
                lowered |= filled < least[choice.index()];
                least[choice.index()] = Math.min(filled, least[choice.index()]);
            }
        }
        return lowered;
    }

    private long filled(FormationView formation, long empty) {
        long sum = empty;
        for (BilletView billet : mayStayEmpty ? List.<BilletView>of() : formation.billets()) {
            long cheapest = NEVER;
            for (Room room : billet.rooms()) {
                cheapest = Math.min(cheapest, filled(room));
            }
            sum = Math.min(NEVER, sum + cheapest);
        }
        return sum;
    }

    private long filled(Room room) {
        int places = room.span().min();
        if (places == 0) {
            return 0;
        }
        long cheapest = NEVER;
        for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
            if (situation.mayTake(ruling.choices().get(i))) {
                cheapest = Math.min(cheapest, least[i]);
            }
        }
        return cheapest >= NEVER / places ? NEVER : cheapest * places;
    }

    /** What a choice takes at the least; at most {@link #NEVER}. */
    public long of(Choice choice) {
        return least[choice.index()];
    }
}
