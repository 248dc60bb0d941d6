package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        List<Turnout> turnouts = turnouts();
        Labour labour = new Labour(question, shares);
        List<Building> chosen = buildings(labour);
        List<Building> buildings = labour.plain(chosen, new PlainBuilds(question.with(fielded), formulation.plainBuilds(values), turnouts, shares)
                .after(purchases, chosen));
        List<Work> work = labour.with(formulation.work(values));
        checkParts(purchases, buildings);
        Money bound = proven ? total : Money.ofMinor(currency, Math.max(0, Math.min(outcome.bound(), outcome.cost())));
        return new Plan(purchases, orders, plain(buildings), conversions(), work, fielded, turnouts,
                leftovers(purchases, buildings, turnouts), total, proven, outcome.settled(), bound);
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

    private static Map<Id, Integer> parts(Supply supply) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Frames frames : supply.frames()) {
            parts.merge(frames.part(), frames.count(), Integer::sum);
        }
        return parts;
    }

    private Map<Id, Integer> boughtParts(List<Purchase> purchases) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Purchase one : purchases) {
            parts(shares.load(one.ware())).forEach((part, count) -> parts.merge(part, count * one.count(), Integer::sum));
        }
        return parts;
    }

    private static Map<Id, Integer> builtParts(List<Building> buildings, boolean lasting) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Building one : buildings) {
            if (one.fixing() == Fixing.GLUED || !lasting) {
                parts.merge(one.part(), one.count(), Integer::sum);
            }
        }
        return parts;
    }

    private void checkParts(List<Purchase> purchases, List<Building> buildings) {
        Map<Id, Integer> there = boughtParts(purchases);
        parts(shelf).forEach((part, count) -> there.merge(part, count, Integer::sum));
        builtParts(buildings, true).forEach((part, count) -> {
            if (count > there.getOrDefault(part, 0)) {
                throw new IllegalStateException("The plan builds " + count + " of " + part + " out of "
                        + there.getOrDefault(part, 0));
            }
        });
    }

    private List<Turnout> turnouts() {
        List<Turnout> turnouts = new ArrayList<>();
        for (int t = 0; t < question.targets().size(); t++) {
            Target target = question.targets().get(t);
            if (!formulation.stands(values, t)) {
                continue;
            }
            fielded.add(target);
            Supply supply = standing(t);
            Turnout turnout = Depot.of(question.market().catalogue(), supply, target.allowance())
                    .turnout(target.needs(), CancelToken.NEVER);
            if (!turnout.complete()) {
                throw new IllegalStateException("The plan leaves " + turnout.lacking() + " short in " + target.id());
            }
            turnouts.add(turnout);
        }
        return turnouts;
    }

    /** Of each type as many as were bought, but no more than there are beside those that stand somewhere. */
    private List<Leftover> leftovers(List<Purchase> purchases, List<Building> buildings, List<Turnout> turnouts) {
        Map<Id, Integer> used = new TreeMap<>();
        for (int t = 0; t < turnouts.size(); t++) {
            Map<Id, Integer> own = Standing.of(turnouts.get(t), shares, fielded.get(t).person());
            own.forEach((type, count) -> used.merge(type, count, Math::max));
        }
        Map<Id, Integer> there = new TreeMap<>();
        shelf.stacks().forEach(stack -> there.merge(stack.what(), stack.counted(), Integer::sum));
        Map<Id, Integer> bought = new TreeMap<>();
        for (Purchase one : purchases) {
            for (Stack stack : shares.load(one.ware()).stacks()) {
                if (stack.counted() > 0) {
                    bought.merge(stack.what(), stack.counted() * one.count(), Integer::sum);
                }
            }
        }
        for (Building one : buildings) {
            // What comes loose is taken apart again: it is never a piece that is left over.
            if (one.fixing() == Fixing.GLUED) {
                one.gives().forEach((type, gives) -> bought.merge(type, gives * one.count(), Integer::sum));
            }
        }
        Map<Id, Integer> left = new TreeMap<>();
        bought.forEach((type, count) -> add(left, type, Math.min(count,
                count + there.getOrDefault(type, 0) - used.getOrDefault(type, 0))));
        Map<Id, Integer> built = builtParts(buildings, false);
        Map<Id, Integer> ownParts = parts(shelf);
        boughtParts(purchases).forEach((part, count) -> add(left, part,
                Math.min(count, count + ownParts.getOrDefault(part, 0) - built.getOrDefault(part, 0))));
        return left.entrySet().stream().map(one -> new Leftover(one.getKey(), one.getValue())).toList();
    }

    private void add(Map<Id, Integer> left, Id what, int count) {
        if (count > 0) {
            left.merge(shares.plain(what), count, Integer::sum);
        }
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

    /** What stands ready for a target, and how much of it is only guessed. */
    private Supply standing(int t) {
        Map<Id, Integer> guessed = new TreeMap<>();
        question.shelves().get(question.targets().get(t).person()).stacks()
                .forEach(stack -> guessed.put(stack.what(), stack.guessed()));
        List<Stack> stacks = new ArrayList<>();
        formulation.standing(values, t).forEach((type, count) -> {
            int unsure = Math.min(count, guessed.getOrDefault(type, 0));
            stacks.add(new Stack(type, count - unsure, unsure, 0));
        });
        return new Supply(stacks, List.of(), List.of(), List.of());
    }
}
