package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;

/**
 * Who stands where in each target of a plan, and what is built for it alone. Whatever comes loose between games the turnout
 * builds as it stands truest; the programme's own builds hold where that is not settled, or where several people share.
 *
 * @param fielded the targets that stand; the other lists have an entry for each
 * @param used what stands, by types that tell whose they are
 * @param alone what is built for it of parts that come loose between games
 */
record Fielding(List<Target> fielded, List<Turnout> turnouts, List<Map<Id, Integer>> used, List<List<Building>> alone) {

    /**
     * Looks at all targets. When it is cancelled, with less patience.
     *
     * @param guesses what of it is only guessed
     * @throws Muster.Undecided if it was not settled that all of them can be fielded
     * @throws IllegalStateException if one cannot: then the plan is wrong
     */
    static Fielding of(Question question, Formulation formulation, long[] values, Guesses guesses,
            CancelToken cancel) throws Muster.Undecided {
        Fielding all = new Fielding(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int t = 0; t < question.targets().size(); t++) {
            if (formulation.stands(values, t)) {
                One one = new One(question, formulation, values, t, guesses, cancel);
                if (!one.truest(all)) {
                    one.asReckoned(all);
                }
            }
        }
        return all;
    }

    private void add(Target target, Turnout turnout, Map<Id, Integer> standing, List<Building> built) {
        fielded.add(target);
        turnouts.add(turnout);
        used.add(standing);
        alone.add(built);
    }

    /** One target. */
    private static final class One {

        private final Question question;
        private final Formulation formulation;
        private final long[] values;
        private final int number;
        private final Guesses guesses;
        private final CancelToken cancel;
        private final Target target;
        private final Shares shares;
        private final Map<Id, Integer> ready;

        One(Question question, Formulation formulation, long[] values, int number, Guesses guesses, CancelToken cancel) {
            this.question = question;
            this.formulation = formulation;
            this.values = values;
            this.number = number;
            this.guesses = guesses;
            this.cancel = cancel;
            target = question.targets().get(number);
            shares = formulation.shares();
            ready = formulation.standing(values, number);
        }

        /** Lets the turnout build whatever is truest of what comes loose between games, if that can be left to it. */
        boolean truest(Fielding all) {
            Optional<Supply> loose = formulation.loose(values, number).filter(supply -> !supply.frames().isEmpty());
            if (loose.isEmpty() || cancel.cancelled()) {
                return false;
            }
            Map<Id, Integer> besides = new TreeMap<>(ready);
            formulation.builtAnew(values, number).forEach((key, count) -> key.gives().forEach((type, gives) ->
                    besides.merge(type, (int) -count * gives, Integer::sum)));
            try {
                Turnout turnout = depot(supply(besides).plus(loose.get())).turnout(target.needs(), cancel);
                if (turnout.complete()) {
                    all.add(target, turnout, Standing.of(turnout, shares, target.person()), built(turnout, loose.get().frames()));
                }
                return turnout.complete();
            } catch (Cancelled inAHurry) {
                return false;
            }
        }

        private List<Building> built(Turnout turnout, List<Frames> loose) {
            Map<List<Id>, Building> built = new TreeMap<>(Comparator.comparing(List::toString));
            turnout.builds().forEach(one -> built.merge(List.of(one.part(), one.build()),
                    building(one.part(), one.build(), one.frames(), one.fixing(), gives(one, loose)), Building::plus));
            return List.copyOf(built.values());
        }

        private Building building(Id part, Id build, int count, Fixing fixing,
                Map<Id, Integer> gives) {
            return new Building(part, build, fixing, count, target.stage(), target.person(), gives);
        }

        private static Map<Id, Integer> gives(Build build, List<Frames> loose) {
            return loose.stream().filter(one -> one.part().equals(build.part())).flatMap(one -> one.ways().stream())
                    .filter(way -> way.build().equals(build.build())).findFirst().orElseThrow().yields();
        }

        /** As the programme has it built; no more than stands. */
        void asReckoned(Fielding all) throws Muster.Undecided {
            Turnout turnout = Muster.of(depot(supply(ready)), target, cancel);
            Map<Id, Integer> standing = Standing.of(turnout, shares, target.person());
            Map<Id, Integer> spare = new TreeMap<>();
            ready.forEach((type, count) -> spare.put(shares.of(type, target.person()), count));
            standing.forEach((type, count) -> spare.merge(type, -count, Integer::sum));
            List<Building> built = new ArrayList<>();
            formulation.builtAnew(values, number).forEach((key, count) -> {
                int idle = Math.max(0, key.gives().entrySet().stream()
                        .mapToInt(gives -> spare.getOrDefault(gives.getKey(), 0) / gives.getValue()).min().orElse(0));
                int needed = (int) (count - Math.min(count, idle));
                key.gives().forEach((type, gives) -> spare.merge(type, (int) (needed - count) * gives, Integer::sum));
                if (needed > 0) {
                    built.add(building(key.part(), key.build(), needed, key.fixing(), key.gives()));
                }
            });
            all.add(target, turnout, standing, built);
        }

        private Depot depot(Supply supply) {
            return Depot.of(question.market().catalogue(), supply, target.allowance());
        }

        /** What stands ready, and how much of it is only guessed. */
        private Supply supply(Map<Id, Integer> counts) {
            Map<Id, Integer> guessed = guesses.of(target);
            List<Stack> stacks = new ArrayList<>();
            counts.forEach((type, count) -> {
                if (count > 0) {
                    int unsure = Math.min(count, guessed.getOrDefault(type, 0));
                    stacks.add(new Stack(type, count - unsure, unsure, 0));
                }
            });
            return new Supply(stacks, List.of(), List.of(), List.of());
        }
    }
}
