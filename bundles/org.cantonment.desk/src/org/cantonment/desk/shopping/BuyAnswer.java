package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.buying.plan.Alternatives;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Priorities;
import org.cantonment.buying.plan.Priorities.Left;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.joda.money.Money;

/**
 * What to buy next.
 *
 * @param shopper for whom
 * @param shops   where
 * @param budget  what it may cost in all; empty for no end of money
 * @param answer  the plan, or why there is none
 * @param left    under a budget: the lists that cannot be had, in order of priority
 * @param why     of those that cannot be had whatever they cost, by the ids of their targets, why not
 * @param further what the first of those beyond the budget costs on top of the plan's purchases; empty if it cannot be had
 * @param next    how many plans were asked for beyond the best
 * @param margin  how much dearer another plan may be
 * @param others  the next best plans, cheapest first
 * @param stopped whether the search was ended before it was through
 */
public record BuyAnswer(Shopper shopper, Shops shops, Optional<Money> budget, Answer answer, List<Left> left,
        Map<Id, List<Finding>> why, Optional<Money> further, int next, Money margin, List<Plan> others, boolean stopped) {
    public BuyAnswer {
        left = List.copyOf(left);
        why = Collections.unmodifiableMap(new LinkedHashMap<>(why));
        others = List.copyOf(others);
    }

    /**
     * Asks.
     *
     * @param budget what it may cost in all; lists are then taken in order of priority
     * @param next   how many plans to look for beyond the best, from 0
     * @param margin how much dearer they may be; empty for half of what the best costs, and no more than the budget leaves
     */
    public static BuyAnswer of(Shopper shopper, Shops shops, Optional<Money> budget, int next, Optional<Money> margin,
            CancelToken cancel, Progress progress) {
        Question question = shopper.question(shops);
        Answer answer;
        List<Left> left = List.of();
        Map<Id, List<Finding>> why = Map.of();
        if (budget.isPresent()) {
            Priorities priorities = Priorities.of(question, budget.get(), shops.currency(), cancel, progress);
            answer = priorities.answer();
            left = priorities.left();
            why = why(question, left, shops, cancel, progress);
            question = question.with(priorities.kept());
        } else {
            answer = Planner.plan(question, shops.currency(), cancel, progress);
        }
        Optional<Money> further = further(question, answer, left, shops, cancel, progress);
        Money dearer = margin(answer, budget, margin, shops);
        List<Plan> others = answer.plan().filter(plan -> next > 0 && plan.proven()).isEmpty() ? List.of()
                : others(question, answer.plan().get(), dearer, next, shops, cancel);
        return new BuyAnswer(shopper, shops, budget, answer, left, why, further, next, dearer, others, cancel.cancelled());
    }

    private static Map<Id, List<Finding>> why(Question question, List<Left> left, Shops shops, CancelToken cancel,
            Progress progress) {
        Map<Id, List<Finding>> why = new LinkedHashMap<>();
        for (Left one : left) {
            if (one.together().isEmpty() && !cancel.cancelled()) {
                why.put(one.target().id(), Planner.plan(question.with(List.of(one.target())), shops.currency(), cancel,
                        progress).findings());
            }
        }
        return why;
    }

    private static Optional<Money> further(Question kept, Answer answer, List<Left> left, Shops shops, CancelToken cancel,
            Progress progress) {
        if (left.isEmpty() || left.get(0).together().isEmpty() || answer.plan().isEmpty()) {
            return Optional.empty();
        }
        List<Target> more = new ArrayList<>(kept.targets());
        more.add(left.get(0).target());
        Plan plan = answer.plan().get();
        return Planner.plan(kept.with(more).buying(plan.boxes()), shops.currency(), cancel, progress).plan()
                .filter(Plan::proven).map(both -> both.total().minus(plan.total()));
    }

    private static Money margin(Answer answer, Optional<Money> budget, Optional<Money> asked, Shops shops) {
        Money none = Money.zero(shops.currency());
        Money cost = answer.plan().map(Plan::total).orElse(none);
        Money margin = asked.orElseGet(() -> Money.ofMinor(shops.currency(), cost.getAmountMinorLong() / 2));
        return budget.filter(most -> most.minus(cost).isLessThan(margin)).map(most -> most.minus(cost)).orElse(margin);
    }

    private static List<Plan> others(Question question, Plan best, Money margin, int next, Shops shops, CancelToken cancel) {
        return Alternatives.of(question, margin, next + 1, shops.currency(), cancel).stream()
                .filter(plan -> !plan.purchases().equals(best.purchases())).limit(next).toList();
    }

    /** Whether there is a plan, and it is for everything that was asked for. */
    public boolean complete() {
        return answer.plan().isPresent() && left.isEmpty();
    }
}
