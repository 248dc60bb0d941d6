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
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads the values of a programme as a plan, and checks the plan with what knows nothing of the programme. */
final class PlanReader {

    private final Question question;
    private final Formulation formulation;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final long[] values;
    private final Shares shares;
    private final Supply shelf;

    private PlanReader(Question question, Formulation formulation, CurrencyUnit currency, long[] values, CancelToken cancel) {
        this.cancel = cancel;
        this.question = question;
        this.formulation = formulation;
        this.currency = currency;
        this.values = values;
        shares = formulation.shares();
        shelf = shares.shelves(question.shelves());
    }

    /**
     * The plan that was found. When it is cancelled it is looked over all the same, with less patience.
     *
     * @throws Muster.Undecided if it was not settled that all targets can be fielded
     * @throws IllegalStateException if the plan does not stand up to the check
     */
    static Plan read(Question question, Formulation formulation, CurrencyUnit currency, Outcome outcome, CancelToken cancel)
            throws Muster.Undecided {
        Plan plan = read(question, formulation, currency, outcome.values(), cancel);
        long total = plan.total().getAmountMinorLong();
        boolean proven = outcome.state() == Outcome.State.PROVEN;
        if (total > outcome.cost() || proven && total < outcome.cost()) {
            throw new IllegalStateException("The prices add up to " + plan.total() + ", the programme to " + outcome.cost());
        }
        return plan.told(proven, outcome.settled(), proven ? plan.total()
                : Money.ofMinor(currency, Math.max(0, Math.min(outcome.bound(), outcome.cost()))));
    }

    /**
     * The plan that these values are; nothing is known yet of what others cost.
     *
     * @throws Muster.Undecided if it was not settled that all targets can be fielded
     * @throws IllegalStateException if the plan does not stand up to the check
     */
    static Plan read(Question question, Formulation formulation, CurrencyUnit currency, long[] values, CancelToken cancel)
            throws Muster.Undecided {
        return new PlanReader(question, formulation, currency, values, cancel).read();
    }

    private Plan read() throws Muster.Undecided {
        List<Purchase> purchases = purchases();
        List<Order> orders = new Receipts(question, currency).orders(purchases);
        Money total = orders.stream().map(Order::total).reduce(Money.zero(currency), Money::plus);
        List<Building> chosen = buildings();
        Fielding fielding = Fielding.of(question, formulation, values, new Guesses(question, purchases, plain(chosen)), cancel);
        List<Building> buildings = new PlainBuilds(question.with(fielding.fielded()), formulation.plainBuilds(values),
                fielding.turnouts(), fielding.alone(), shares).after(purchases, chosen);
        checkParts(purchases, buildings);
        List<Leftover> left = new Leftovers(shares, shelf, purchases).of(fielding.used(), chosen, buildings, fielding.alone());
        return new Plan(purchases, orders, plain(buildings), fielding.alone().stream().map(this::plain).toList(), conversions(),
                fielding.fielded(), fielding.turnouts(), left, total, false, false, Money.zero(currency));
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

    private List<Building> buildings() {
        List<Building> buildings = new ArrayList<>();
        List<Map<BuildKey, Long>> built = formulation.built(values);
        for (int s = 0; s < built.size(); s++) {
            int stage = s;
            built.get(s).forEach((key, count) -> buildings.add(
                    new Building(key.part(), key.build(), key.fixing(), (int) (long) count, stage, 0, key.gives())));
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

    /** The builds by plain names, with whom each is for. */
    private List<Building> plain(List<Building> buildings) {
        return buildings.stream().map(one -> {
            Map<Id, Integer> gives = new TreeMap<>();
            one.gives().forEach((type, count) -> gives.put(shares.plain(type), count));
            return new Building(one.part(), shares.plain(one.build()), one.fixing(), one.count(), one.stage(),
                    shares.person(one.build()), gives);
        }).toList();
    }
}
