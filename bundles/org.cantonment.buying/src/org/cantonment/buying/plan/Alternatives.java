package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.TreeMap;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.formulate.Between;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * The next best plans, cheapest first. Each leaves out at least one purchase of each plan before it: a plan with a box more
 * than another is no alternative to it. (All plans but one fall into classes by the first purchase in which they have less;
 * the best of each class is sought: Lawler's method for the best solutions in order.)
 */
public final class Alternatives {

    private record Class(Plan plan, Map<Id, Between> bounds, int number) {
    }

    private final Question question;
    private final Formulation formulation;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Queue<Class> open = new PriorityQueue<>(
            Comparator.comparing((Class one) -> one.plan().total()).thenComparingInt(Class::number));
    private int numbers;

    private Alternatives(Question question, CurrencyUnit currency, CancelToken cancel) {
        this.question = question;
        this.formulation = new Formulation(question, cancel);
        this.currency = currency;
        this.cancel = cancel;
    }

    /**
     * The plans that cost no more than a margin beyond the best, the best among them. When it is cancelled, those that were
     * found until then: nothing cheaper was left out of them.
     *
     * @param most at most so many plans
     */
    public static List<Plan> of(Question question, Money margin, int most, CurrencyUnit currency, CancelToken cancel) {
        try {
            return new Alternatives(question, currency, cancel).find(margin, most);
        } catch (Cancelled beforeThereWasAQuestion) {
            return List.of();
        }
    }

    private List<Plan> find(Money margin, int most) {
        seek(Map.of(), Optional.empty());
        List<Plan> found = new ArrayList<>();
        while (!open.isEmpty() && found.size() < most && !cancel.cancelled()) {
            Class next = open.poll();
            found.add(next.plan());
            split(next, found.get(0).total().plus(margin));
        }
        return found;
    }

    private void split(Class of, Money limit) {
        Map<Id, Integer> bought = new TreeMap<>();
        of.plan().purchases().forEach(one -> bought.merge(one.ware().line(), one.count(), Integer::sum));
        Map<Id, Between> bounds = new TreeMap<>(of.bounds());
        for (Map.Entry<Id, Integer> one : bought.entrySet()) {
            Between before = bounds.getOrDefault(one.getKey(), Between.ANY);
            Map<Id, Between> fewer = new TreeMap<>(bounds);
            fewer.put(one.getKey(), before.atMost(one.getValue() - 1));
            if (before.least() < one.getValue()) {
                seek(fewer, Optional.of(limit));
            }
            bounds.put(one.getKey(), before.atLeast(one.getValue()));
        }
    }

    private void seek(Map<Id, Between> bounds, Optional<Money> limit) {
        if (cancel.cancelled()) {
            return;
        }
        Outcome outcome = Solver.solve(formulation.within(bounds), formulation.preference(), Limits.WIDE, cancel,
                Progress.SILENT);
        if (outcome.state() == Outcome.State.PROVEN) {
            read(outcome).filter(plan -> limit.isEmpty() || !plan.total().isGreaterThan(limit.get()))
                    .ifPresent(plan -> open.add(new Class(plan, bounds, numbers++)));
        }
    }

    /** What the outcome says; empty if it was not settled whether that is enough. */
    private Optional<Plan> read(Outcome outcome) {
        try {
            return Optional.of(Truest.of(question, PlanReader.read(question, formulation, currency, outcome, cancel), currency, cancel));
        } catch (Muster.Undecided open) {
            return Optional.empty();
        }
    }
}
