package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.formulate.BuildKey;
import org.cantonment.buying.formulate.Shares;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads the values of a programme as a plan, and checks the plan with what knows nothing of the programme. */
final class PlanReader {

    private final Question question;
    private final Formulation formulation;
    private final CurrencyUnit currency;
    private final Outcome outcome;
    private final long[] values;
    private final Shares shares;
    private final Supply shelf;
    private final List<Target> fielded = new ArrayList<>();
    // what follows has an entry for each that is fielded
    private final List<Turnout> turnouts = new ArrayList<>();
    private final List<Map<Id, Integer>> used = new ArrayList<>();
    private final List<List<Building>> alone = new ArrayList<>();

    PlanReader(Question question, Formulation formulation, CurrencyUnit currency, Outcome outcome) {
        this.question = question;
        this.formulation = formulation;
        this.currency = currency;
        this.outcome = outcome;
        values = outcome.values();
        shares = formulation.shares();
        shelf = shares.shelves(question.shelves());
    }

    /** @throws IllegalStateException if the plan does not stand up to the check */
    Plan read() {
        List<Purchase> purchases = purchases();
        List<Order> orders = new Receipts(question, currency).orders(purchases);
        Money total = orders.stream().map(Order::total).reduce(Money.zero(currency), Money::plus);
        boolean proven = outcome.state() == Outcome.State.PROVEN;
        if (total.getAmountMinorLong() > outcome.cost() || proven && total.getAmountMinorLong() < outcome.cost()) {
            throw new IllegalStateException("The prices add up to " + total + ", the programme to " + outcome.cost());
        }
        turnouts();
        Labour labour = new Labour(question, shares);
        List<Building> chosen = buildings(labour);
        List<Building> buildings = labour.plain(chosen, new PlainBuilds(question.with(fielded), formulation.plainBuilds(values),
                turnouts, alone, shares).after(purchases, chosen));
        List<Work> work = labour.with(formulation.work(values), alone);
        checkParts(purchases, buildings);
        Money bound = proven ? total : Money.ofMinor(currency, Math.max(0, Math.min(outcome.bound(), outcome.cost())));
        return new Plan(purchases, orders, plain(buildings), alone.stream().map(this::plain).toList(), conversions(), work,
                fielded, turnouts, new Leftovers(shares, shelf, purchases).of(used, chosen, buildings, alone), total, proven,
                outcome.settled(), bound);
    }

    private List<Purchase> purchases() {
        Map<List<Object>, Purchase> all = new LinkedHashMap<>();
        long[][] bought = formulation.bought(values);
        for (int w = 0; w < bought.length; w++) {
            Ware ware = formulation.wares().get(w);
            for (int s = 0; s < bought[w].length; s++) {
                if (bought[w][s] > 0) {
                    all.merge(List.of(ware.line(), s), new Purchase(ware, (int) bought[w][s], s),
                            (one, other) -> new Purchase(ware, one.count() + other.count(), one.stage()));
                }
            }
        }
        List<Purchase> purchases = new ArrayList<>(all.values());
        purchases.sort(Comparator.comparingInt(Purchase::stage));
        return purchases;
    }

    private List<Building> buildings(Labour labour) {
        List<Building> buildings = new ArrayList<>();
        List<Map<BuildKey, Long>> built = formulation.built(values);
        for (int s = 0; s < built.size(); s++) {
            int stage = s;
            Map<BuildKey, Long> before = s == 0 ? Map.of() : built.get(s - 1);
            built.get(s).forEach((key, count) -> {
                int stood = key.fixing() == Fixing.GLUED ? 0 : stage == 0 ? labour.ready(key.build())
                        : (int) (long) before.getOrDefault(key, 0L);
                buildings.add(new Building(key.part(), key.build(), key.fixing(), (int) (long) count,
                        Math.max(0, (int) (long) count - stood), stage, 0, key.gives()));
            });
        }
        return buildings;
    }

    private List<Conversions> conversions() {
        List<Conversions> all = new ArrayList<>();
        formulation.worked(values).forEach((turn, times) -> {
            for (int s = 0; s < times.length; s++) {
                if (times[s] > 0) {
                    all.add(new Conversions(plain(turn), (int) times[s], s, shares.person(turn.line())));
                }
            }
        });
        return all;
    }

    private Conversion plain(Conversion turn) {
        Map<Id, Integer> from = new TreeMap<>();
        turn.from().forEach((type, count) -> from.put(shares.plain(type), count));
        return new Conversion(shares.plain(turn.line()), from, shares.plain(turn.to()), turn.gives(), turn.times());
    }

    private static Map<Id, Integer> glued(List<Building> buildings) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Building one : buildings) {
            if (one.fixing() == Fixing.GLUED) {
                parts.merge(one.part(), one.count(), Integer::sum);
            }
        }
        return parts;
    }

    private void checkParts(List<Purchase> purchases, List<Building> buildings) {
        Map<Id, Integer> there = Leftovers.bought(purchases, shares);
        Leftovers.parts(shelf).forEach((part, count) -> there.merge(part, count, Integer::sum));
        glued(buildings).forEach((part, count) -> {
            if (count > there.getOrDefault(part, 0)) {
                throw new IllegalStateException("The plan builds " + count + " of " + part + " out of "
                        + there.getOrDefault(part, 0));
            }
        });
    }

    /** Who stands where for each target, and what is built for it alone. */
    private void turnouts() {
        for (int t = 0; t < question.targets().size(); t++) {
            if (formulation.stands(values, t)) {
                Target target = question.targets().get(t);
                fielded.add(target);
                if (!truest(t, target)) {
                    asReckoned(t, target);
                }
            }
        }
    }

    /** Lets the turnout build whatever is truest of what comes loose between games, if that can be left to it. */
    private boolean truest(int t, Target target) {
        Optional<Supply> loose = formulation.loose(values, t);
        if (loose.isEmpty()) {
            return false;
        }
        Map<Id, Integer> ready = formulation.standing(values, t);
        formulation.builtAnew(values, t).forEach((key, count) -> key.gives().forEach((type, gives) ->
                ready.merge(type, (int) -count * gives, Integer::sum)));
        Turnout turnout = turnout(supply(ready, target).plus(loose.get()), target);
        if (turnout.complete()) {
            used.add(Standing.of(turnout, shares, target.person()));
            Map<List<Id>, Building> built = new TreeMap<>(Comparator.comparing(List::toString));
            turnout.builds().forEach(one -> built.merge(List.of(one.part(), one.build()), new Building(one.part(), one.build(),
                    one.fixing(), one.frames(), one.frames(), target.stage(), target.person(), gives(one, loose.get().frames())), Building::plus));
            alone.add(List.copyOf(built.values()));
            turnouts.add(turnout);
        }
        return turnout.complete();
    }

    private static Map<Id, Integer> gives(Build build, List<Frames> loose) {
        return loose.stream().filter(one -> one.part().equals(build.part())).flatMap(one -> one.ways().stream())
                .filter(way -> way.build().equals(build.build())).findFirst().orElseThrow().gives();
    }

    /** As the programme has it built; no more than stands. */
    private void asReckoned(int t, Target target) {
        Map<Id, Integer> ready = formulation.standing(values, t);
        Turnout turnout = turnout(supply(ready, target), target);
        if (!turnout.complete()) {
            throw new IllegalStateException("The plan leaves " + turnout.lacking() + " short in " + target.id());
        }
        Map<Id, Integer> standing = Standing.of(turnout, shares, target.person());
        Map<Id, Integer> spare = new TreeMap<>();
        ready.forEach((type, count) -> spare.put(shares.of(type, target.person()), count));
        standing.forEach((type, count) -> spare.merge(type, -count, Integer::sum));
        List<Building> built = new ArrayList<>();
        formulation.builtAnew(values, t).forEach((key, count) -> {
            int idle = Math.max(0, key.gives().entrySet().stream()
                    .mapToInt(gives -> spare.getOrDefault(gives.getKey(), 0) / gives.getValue()).min().orElse(0));
            int number = (int) (count - Math.min(count, idle));
            key.gives().forEach((type, gives) -> spare.merge(type, (int) (number - count) * gives, Integer::sum));
            if (number > 0) {
                built.add(new Building(key.part(), key.build(), key.fixing(), number, number, target.stage(), target.person(),
                        key.gives()));
            }
        });
        used.add(standing);
        alone.add(built);
        turnouts.add(turnout);
    }

    private Turnout turnout(Supply supply, Target target) {
        return Depot.of(question.market().catalogue(), supply, target.allowance()).turnout(target.needs(), CancelToken.NEVER);
    }

    /** What stands ready for a target, and how much of it is only guessed. */
    private Supply supply(Map<Id, Integer> ready, Target target) {
        Map<Id, Integer> guessed = new TreeMap<>();
        question.shelves().get(target.person()).stacks().forEach(stack -> guessed.put(stack.what(), stack.guessed()));
        List<Stack> stacks = new ArrayList<>();
        ready.forEach((type, count) -> {
            if (count > 0) {
                int unsure = Math.min(count, guessed.getOrDefault(type, 0));
                stacks.add(new Stack(type, count - unsure, unsure, 0));
            }
        });
        return new Supply(stacks, List.of(), List.of(), List.of());
    }

    /** The builds by plain names, with whom each is for. */
    private List<Building> plain(List<Building> buildings) {
        return buildings.stream().map(one -> {
            Map<Id, Integer> gives = new TreeMap<>();
            one.gives().forEach((type, count) -> gives.put(shares.plain(type), count));
            return new Building(one.part(), shares.plain(one.build()), one.fixing(), one.count(), one.newly(), one.stage(),
                    shares.person(one.build()), gives);
        }).toList();
    }
}
