package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
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
     * The plan of least cost, with the builds that let the truest stand. When it is cancelled it says the best plan so far and
     * the bound.
     *
     * @param currency the currency of account that the market was reckoned in
     */
    public static Answer plan(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        Answer answer = plan(question, currency, Limits.WIDE, cancel, progress);
        return new Answer(answer.plan().map(plan -> Truest.of(question, plan, currency, cancel)), answer.impossible(),
                answer.bound(), answer.findings());
    }

    /** The plan of least cost within a limit of work, whatever is built for it. */
    public static Answer plan(Question question, CurrencyUnit currency, Limits limits, CancelToken cancel,
            Progress progress) {
        try {
            return plan(question, new Formulation(question, cancel), currency, limits, cancel, progress);
        } catch (Cancelled beforeThereWasAQuestion) {
            return new Answer(Optional.empty(), false, Optional.of(Money.zero(currency)), question.market().findings());
        }
    }

    private static Answer plan(Question question, Formulation formulation, CurrencyUnit currency, Limits limits,
            CancelToken cancel, Progress progress) {
        Outcome outcome = Solver.solve(formulation.programme(), formulation.preference(), limits, cancel, progress);
        if (outcome.state() == Outcome.State.IMPOSSIBLE) {
            return new Answer(Optional.empty(), true, Optional.empty(),
                    new Lack(question, currency, limits, cancel).findings());
        }
        Optional<Money> bound = Optional.of(Money.ofMinor(currency, Math.max(0, outcome.bound())));
        if (!outcome.found()) {
            return new Answer(Optional.empty(), false, bound, question.market().findings());
        }
        try {
            Plan plan = PlanReader.read(question, formulation, currency, outcome, cancel);
            return new Answer(Optional.of(plan), false, bound, question.market().findings());
        } catch (Muster.Undecided open) {
            return new Answer(Optional.empty(), false, bound, undecided(question, outcome, open, currency, cancel));
        }
    }

    private static List<Finding> undecided(Question question, Outcome outcome, Muster.Undecided open, CurrencyUnit currency,
            CancelToken cancel) {
        List<Finding> findings = new ArrayList<>(question.market().findings());
        if (!cancel.cancelled()) {
            findings.add(Finding.of("buying.undecided", Severity.CAUTION, question.targets().get(0).id(),
                    "Purchases for " + Lack.text(Money.ofMinor(currency, outcome.cost())) + " seem to be enough, but it was "
                            + "not settled who could stand where in " + open.getMessage() + ", so they are not proposed."));
        }
        return findings;
    }

    /** What a plan costs that is made of exactly these purchases: for whoever wants to check one. */
    public static Money cost(Question question, List<Purchase> purchases, CurrencyUnit currency) {
        return new Receipts(question, currency).orders(purchases).stream().map(Order::total)
                .reduce(Money.zero(currency), Money::plus);
    }
}
