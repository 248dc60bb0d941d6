package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * As many targets as can be had for so much, in order of priority: each that still fits beside those before it is kept.
 *
 * @param answer the plan for those that are kept
 * @param kept the targets that can be had, in order
 * @param left those that cannot, each with what it would cost together with those kept before it
 */
public record Priorities(Answer answer, List<Target> kept, List<Left> left) {

    /**
     * A target that is beyond the budget, or that cannot be had at all.
     *
     * @param together what it would cost together with those kept before it; empty if it cannot be had, or nothing was found
     * @param settled whether it is proven that it cannot be had for the budget
     */
    public record Left(Target target, Optional<Money> together, boolean settled) {
    }

    public Priorities {
        kept = List.copyOf(kept);
        left = List.copyOf(left);
    }

    /**
     * Asks about the targets of a question, the first first. The budgets of its stages stay as they are. When it is
     * cancelled, what was not reached is left, and that is not settled.
     *
     * @param budget what all may cost together
     */
    public static Priorities of(Question question, Money budget, CurrencyUnit currency, CancelToken cancel,
            Progress progress) {
        List<Target> kept = new ArrayList<>();
        List<Left> left = new ArrayList<>();
        Answer best = Planner.plan(question.with(List.of()), currency, cancel, progress);
        for (Target target : question.targets()) {
            if (cancel.cancelled()) {
                left.add(new Left(target, Optional.empty(), false));
                continue;
            }
            List<Target> trial = new ArrayList<>(kept);
            trial.add(target);
            Answer answer = Planner.plan(question.with(trial), currency, cancel, progress);
            Optional<Money> cost = answer.plan().map(Plan::total);
            if (cost.isPresent() && !cost.get().isGreaterThan(budget)) {
                kept.add(target);
                best = answer;
            } else {
                boolean settled = answer.impossible() || answer.bound().filter(one -> one.isGreaterThan(budget)).isPresent();
                left.add(new Left(target, cost, settled));
            }
        }
        return new Priorities(best, kept, left);
    }
}
