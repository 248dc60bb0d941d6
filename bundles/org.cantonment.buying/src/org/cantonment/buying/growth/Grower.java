package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.Supplier;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.formulate.Paid;
import org.cantonment.buying.growth.Growth.Account;
import org.cantonment.buying.growth.Growth.Advice;
import org.cantonment.buying.growth.Growth.Shortfall;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.plan.Truest;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Plans purchases over several stages. Holds no state that outlives a question. */
public final class Grower {

    /** So much work is worth while for a plan; what is found until then is told with its bound. */
    private static final Limits PLAN = new Limits(30_000, 100_000);
    /** And for what is told beside it. */
    private static final Limits BESIDE = new Limits(20_000, 50_000);

    private final Question question;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Progress progress;

    private Grower(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        this.question = question;
        this.currency = currency;
        this.cancel = cancel;
        this.progress = progress;
    }

    /** The plan of least cost over all stages. When it is cancelled it says the best so far and leaves out what it lacks. */
    public static Growth grow(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        return new Grower(question, currency, cancel, progress).grow();
    }

    private Growth grow() {
        if (question.targets().stream().anyMatch(target -> target.choice().isPresent())) {
            Chooser.Chosen chosen = new Chooser(question, currency, cancel, progress).choose();
            Growth.Lists lists = chosen.best() ? Growth.Lists.BEST_OF_TRIED : Growth.Lists.GOOD;
            return new Grower(question.with(chosen.targets()), currency, cancel, progress).told(chosen.answer(), lists);
        }
        Optional<Shortfall> inAll = inAll();
        if (inAll.isPresent()) {
            return new Growth(new Answer(Optional.empty(), true, Optional.empty(), question.market().findings()),
                    Growth.Lists.GIVEN, List.of(), unlessCancelled(() -> shortfall(inAll)), Optional.empty(), Optional.empty());
        }
        return told(new Stages(question, currency, cancel, progress).plan(PLAN), Growth.Lists.GIVEN);
    }

    private Growth told(Answer answer, Growth.Lists lists) {
        if (answer.plan().isEmpty()) {
            return new Growth(answer, lists, List.of(), answer.impossible() ? unlessCancelled(() -> shortfall(inAll()))
                    : Optional.empty(), Optional.empty(), Optional.empty());
        }
        Plan plan = Truest.of(question, answer.plan().get(), currency, cancel);
        Answer truest = new Answer(Optional.of(plan), answer.impossible(), answer.bound(), answer.findings());
        return new Growth(truest, lists, accounts(plan), Optional.empty(), stepwise(), plan.proven()
                ? unlessCancelled(() -> advice(plan)) : Optional.empty());
    }

    private static <T> Optional<T> unlessCancelled(Supplier<Optional<T>> asked) {
        try {
            return asked.get();
        } catch (Cancelled beforeThereWasAQuestion) {
            return Optional.empty();
        }
    }

    private List<Account> accounts(Plan plan) {
        List<Account> accounts = new ArrayList<>();
        Optional<Money> hand = Optional.of(Money.zero(currency));
        for (int s = 0; s < question.stages().size(); s++) {
            Optional<Money> budget = question.stages().get(s).budget();
            Optional<Money> before = hand;
            Optional<Money> available = question.saved() ? budget.flatMap(one -> before.map(one::plus)) : budget;
            Money paid = plan.paid(s);
            hand = question.saved() ? available.map(one -> one.minus(paid)) : hand;
            accounts.add(new Account(s, budget, available, paid, question.saved() ? hand : Optional.empty()));
        }
        return accounts;
    }

    /** The stages up to one, and what must stand in them. */
    private Question until(int stage) {
        List<Target> targets = question.targets().stream().filter(target -> target.stage() <= stage).toList();
        return question.with(targets).with(question.stages().subList(0, stage + 1), question.saved());
    }

    /** The first stage until which all budgets together are less than what everything until then costs at once. */
    private Optional<Shortfall> inAll() {
        Money budgets = Money.zero(currency);
        for (int s = 0; s < question.stages().size() && question.stages().get(s).budget().isPresent(); s++) {
            budgets = budgets.plus(question.stages().get(s).budget().get());
            Question until = until(s);
            Optional<Plan> plan = new Stages(until, currency, cancel, progress).once(until.targets(), BESIDE).plan()
                    .filter(Plan::proven);
            if (plan.isEmpty()) {
                return Optional.empty();
            }
            Money cost = plan.get().total();
            if (cost.isGreaterThan(budgets)) {
                return Optional.of(new Shortfall(s, false, cost.minus(budgets), cost, budgets));
            }
        }
        return Optional.empty();
    }

    /** By how much the first stage is short that cannot be done; if that is not settled soon, what is known at the least. */
    private Optional<Shortfall> shortfall(Optional<Shortfall> inAll) {
        int known = inAll.map(Shortfall::stage).orElse(question.stages().size() - 1);
        for (int s = 0; s <= known && !cancel.cancelled(); s++) {
            Question until = until(s);
            if (s < known && new Stages(until, currency, cancel, progress).plan(BESIDE).plan().isPresent()) {
                continue;
            }
            Formulation helped = new Formulation(until, s, OptionalLong.empty(), cancel);
            Outcome outcome = Solver.solve(helped.programme(), BESIDE, cancel, progress);
            if (outcome.state() != Outcome.State.PROVEN) {
                return inAll;
            }
            if (outcome.cost() > 0) {
                return Optional.of(shortfall(s, Money.ofMinor(currency, outcome.cost()), helped, outcome.values()));
            }
        }
        return inAll;
    }

    private Shortfall shortfall(int stage, Money missing, Formulation helped, long[] values) {
        Money available = question.stages().get(stage).budget().orElseThrow();
        if (question.saved()) {
            for (int s = 0; s < stage; s++) {
                Paid paid = helped.paid(values, s);
                available = available.plus(question.stages().get(s).budget().orElseThrow())
                        .minus(Money.ofMinor(currency, paid.total()));
            }
        }
        return new Shortfall(stage, true, missing, available.plus(missing), available);
    }

    /** The stages with no end of money. */
    private List<Stage> open() {
        return question.stages().stream().map(Stage::withoutBudget).toList();
    }

    /** Not asked where several order together: who gets what of the first step would have to be told. */
    private Optional<Money> stepwise() {
        if (question.stages().size() < 2 || question.shelves().size() > 1) {
            return Optional.empty();
        }
        Optional<Plan> first = Planner.plan(until(0), currency, BESIDE, cancel, progress).plan();
        if (first.isEmpty() || !first.get().proven()) {
            return Optional.empty();
        }
        Supply shelf = question.shelves().get(0);
        Map<Id, Integer> bought = new TreeMap<>();
        for (Purchase one : first.get().purchases()) {
            bought.merge(one.ware().line(), one.count(), Integer::sum);
            for (int i = 0; i < one.count(); i++) {
                shelf = shelf.plus(one.ware().load());
            }
        }
        Question rest = new Question(question.market().after(bought), shelf, question.targets(), open(), false,
                question.atLeast());
        return new Stages(rest, currency, cancel, progress).plan(BESIDE).plan().filter(Plan::proven)
                .map(plan -> plan.total().plus(first.get().total()));
    }

    /** How little more in the first stage brings the whole down to what it costs with no end of money. */
    private Optional<Advice> advice(Plan plan) {
        if (question.stages().get(0).budget().isEmpty()) {
            return Optional.empty();
        }
        Optional<Plan> free = new Stages(question.with(open(), false), currency, cancel, progress).plan(BESIDE).plan();
        if (free.isEmpty() || !free.get().proven() || !free.get().total().isLessThan(plan.total())) {
            return Optional.empty();
        }
        Formulation helped = new Formulation(question, 0, OptionalLong.of(free.get().total().getAmountMinorLong()), cancel);
        Outcome outcome = Solver.solve(helped.programme(), BESIDE, cancel, progress);
        return outcome.state() != Outcome.State.PROVEN ? Optional.empty()
                : Optional.of(new Advice(Money.ofMinor(currency, outcome.cost()), plan.total().minus(free.get().total())));
    }
}
