package org.cantonment.buying.reach;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Programme;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What formations cost that a shelf cannot field: what is bought and what stands in the formation are chosen together, at
 * least cost. What comes out is added up anew from the prices, and looked at as a turnout. Questions that come to the same
 * programme are asked once.
 */
public final class Costs {

    private static final Id NAME = Id.of("formation");
    private static final String TITLE = "this formation";
    /** The planner gives up sooner than it would for a player's lists. */
    private static final Limits LIMITS = new Limits(60_000, 50_000);

    private final Market market;
    private final CurrencyUnit currency;
    private final Supply supply;
    private final Map<Programme, Outcome> known = new HashMap<>();

    /** By what can be had on a day, reckoned in a currency, for somebody who has this. */
    public Costs(Market market, CurrencyUnit currency, Supply supply) {
        this.market = market;
        this.currency = currency;
        this.supply = supply;
    }

    /**
     * The least that makes a formation fieldable, whatever stands in it. When it is cancelled it tells the best so far.
     *
     * @param nearest the filling that lacks least: where nothing that can be had is enough, it is told why for this one
     */
    public Cost cost(Asked asked, Filling nearest, CancelToken cancel) {
        if (cancel.cancelled()) {
            return Cost.unknown();
        }
        Roster roster = new Roster(asked, Trying.WHAT_STANDS_LATE);
        try {
            return cost(asked, nearest, roster, new Formulation(question(new Filling(List.of(), roster.atMost()), asked),
                    roster.sought(0), cancel), cancel);
        } catch (Cancelled beforeThereWasAQuestion) {
            return Cost.unknown();
        }
    }

    private Cost cost(Asked asked, Filling nearest, Roster roster, Formulation formulation, CancelToken cancel) {
        Outcome outcome = known.get(formulation.programme());
        if (outcome == null) {
            outcome = Trying.WHAT_STANDS_LATE.solve(formulation.programme(), cancel);
            if (!cancel.cancelled()) {
                known.put(formulation.programme(), outcome);
            }
        }
        if (outcome.found()) {
            return read(outcome, formulation, roster.filling(outcome.values()), asked, cancel);
        }
        return cancel.cancelled() ? Cost.unknown() : planned(nearest, asked, outcome, cancel);
    }

    /** Whether anything can be had that may stand for one of these. */
    public boolean sold(List<Id> anyOf, Allowance allowance) {
        Accepted accepted = allowance.accepted(market.catalogue(), anyOf, Optional.empty());
        Set<Id> types = new HashSet<>(accepted.types().keySet());
        accepted.standIns().values().forEach(types::addAll);
        return market.wares().stream().map(Ware::load).anyMatch(load -> load.stacks().stream().map(Stack::what)
                .anyMatch(types::contains) || load.frames().stream().flatMap(frames -> frames.ways().stream())
                        .flatMap(way -> way.gives().keySet().stream()).anyMatch(types::contains));
    }

    private Question question(Filling filling, Asked asked) {
        return Question.of(market, supply, List.of(Target.now(NAME, TITLE, filling.needs(), asked.allowance())));
    }

    private Cost read(Outcome outcome, Formulation formulation, Filling filling, Asked asked, CancelToken cancel) {
        List<Purchase> purchases = new ArrayList<>();
        long[][] bought = formulation.bought(outcome.values());
        Supply all = supply;
        for (int w = 0; w < bought.length; w++) {
            if (bought[w][0] > 0) {
                purchases.add(new Purchase(formulation.wares().get(w), (int) bought[w][0], 0));
                for (int i = 0; i < bought[w][0]; i++) {
                    all = all.plus(formulation.wares().get(w).load());
                }
            }
        }
        Money total = Planner.cost(question(filling, asked), purchases, currency);
        boolean proven = outcome.state() == Outcome.State.PROVEN && total.getAmountMinorLong() == outcome.cost();
        Depot depot = Depot.of(market.catalogue(), all, asked.allowance());
        return total.getAmountMinorLong() <= outcome.cost()
                && depot.look(filling.needs(), Depot.BRANCHES_FOR_ENOUGH, CancelToken.NEVER).enough()
                        ? new Cost(Optional.of(total), purchases, Optional.of(filling), proven, List.of())
                        : planned(filling, asked, outcome, cancel);
    }

    /** What the planner says of one filling: where a short look at it does not tell, and why nothing is enough. */
    private Cost planned(Filling filling, Asked asked, Outcome outcome, CancelToken cancel) {
        Answer answer = Planner.plan(question(filling, asked), currency, LIMITS, cancel, Progress.SILENT);
        if (answer.plan().isEmpty()) {
            return new Cost(Optional.empty(), List.of(), Optional.empty(), outcome.state() == Outcome.State.IMPOSSIBLE,
                    answer.findings());
        }
        boolean proven = outcome.state() == Outcome.State.PROVEN && answer.plan().get().proven()
                && answer.plan().get().total().getAmountMinorLong() == outcome.cost();
        return new Cost(Optional.of(answer.plan().get().total()), answer.plan().get().purchases(), Optional.of(filling),
                proven, List.of());
    }
}
