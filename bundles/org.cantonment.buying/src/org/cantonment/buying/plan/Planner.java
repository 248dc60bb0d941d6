package org.cantonment.buying.plan;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Finds the plan of least cost. Among plans that cost the same it takes the one with the fewest pieces bought (and so the
 * fewest left over), then with the fewest boxes, then with the boxes whose codes come first. Holds no state.
 *
 * <p>A plan is never said to be proven unless its bound was reckoned in whole numbers, its cost was added up anew from the
 * prices, and each target has a complete turnout.
 */
public final class Planner {

    private Planner() {
    }

    /**
     * The plan of least cost. When it is cancelled it says the best plan so far and the bound.
     *
     * @param currency the currency of account that the market was reckoned in
     */
    public static Answer plan(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        return plan(question, currency, Limits.WIDE, cancel, progress);
    }

    /** The same with a limit of work. */
    public static Answer plan(Question question, CurrencyUnit currency, Limits limits, CancelToken cancel,
            Progress progress) {
        Formulation formulation = new Formulation(question);
        Outcome outcome = Solver.solve(formulation.programme(), formulation.preference(), limits, cancel, progress);
        if (outcome.state() == Outcome.State.IMPOSSIBLE) {
            return new Answer(Optional.empty(), true, Optional.empty(),
                    new Lack(question, currency, limits, cancel).findings());
        }
        Optional<Money> bound = Optional.of(Money.ofMinor(currency, Math.max(0, outcome.bound())));
        if (!outcome.found()) {
            return new Answer(Optional.empty(), false, bound, question.market().findings());
        }
        Plan plan = new PlanReader(question, formulation, currency, outcome).read();
        return new Answer(Optional.of(plan), false, bound, question.market().findings());
    }

    /** What a plan costs that is made of exactly these purchases: for whoever wants to check one. */
    public static Money cost(Question question, List<Purchase> purchases, CurrencyUnit currency) {
        return new Receipts(question, currency).orders(purchases).stream().map(Order::total)
                .reduce(Money.zero(currency), Money::plus);
    }
}
