package org.cantonment.buying.growth;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Bench;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Plans that are made in stages. What all of it would cost if it were bought at once is soon known, and nothing that is
 * bought by and by costs less: the same goods then pay postage more often, and a budget only forbids. So the boxes of that
 * plan are tried first, each when it is wanted; if they cost no more than at once, that plan is proven, and only otherwise
 * are all boxes in all stages searched.
 */
final class Stages {

    /** So much work is worth while for what is bought at once: with its proof most plans in stages are proven. */
    static final Limits ONCE = new Limits(60_000, 20_000);

    /** And for its boxes in stages. */
    private static final Limits BOXES = new Limits(20_000, 20_000);

    private static final Limits EARLY = new Limits(4_000, 5_000);

    /** More than anything costs. */
    private static final long UNHEARD = Long.MAX_VALUE / 4;

    private final Question question;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Progress progress;
    private final Market market;
    private final List<Supply> shelves;

    Stages(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        this.question = question;
        this.currency = currency;
        this.cancel = cancel;
        this.progress = progress;
        market = rebuilt(question.market());
        shelves = question.shelves().stream().map(Stages::rebuilt).toList();
    }

    /**
     * The plan of least cost.
     *
     * @param work what is worth while where the boxes of the plan at once will not do
     */
    Answer plan(Limits work) {
        if (question.stages().size() < 2) {
            return Planner.plan(question, currency, work, cancel, progress);
        }
        Answer once = once(question.targets(), ONCE);
        Set<Id> boxes = new TreeSet<>(once.plan().map(plan -> plan.boxes().keySet()).orElse(Set.of()));
        Optional<Plan> near = once.plan().flatMap(this::just);
        Optional<Money> floor = once.bound();
        if (near.isPresent() && floor.filter(near.get().total()::equals).isPresent()) {
            Plan plan = told(near.get(), floor.get(), near.get().settled() && once.plan().get().settled());
            return new Answer(Optional.of(plan), false, floor, once.findings());
        }
        if (once.plan().isPresent() && boxes.addAll(early())) {
            Optional<Plan> first = near;
            near = of(boxes).filter(plan -> first.isEmpty() || !first.get().total().isLessThan(plan.total())).or(() -> first);
        }
        return whole(near, floor, work);
    }

    /** Just what is bought at once, each of it when it is wanted. */
    private Optional<Plan> just(Plan once) {
        Map<Id, Integer> counts = new TreeMap<>();
        once.purchases().forEach(one -> counts.merge(one.ware().line(), one.count(), Integer::sum));
        Market market = question.market();
        List<Ware> wares = market.wares().stream().filter(one -> counts.containsKey(one.line())).map(one -> new Ware(one.line(),
                one.box(), one.boxes(), one.title(), one.code(), one.seller(), one.price(), one.cost(), counts.get(one.line()),
                one.load(), one.pieces())).toList();
        return Planner.plan(question.with(new Market(market.catalogue(), wares, market.terms(), market.unpriced(),
                market.findings())).buying(once.boxes()), currency, BOXES, cancel, progress).plan();
    }

    private Optional<Plan> of(Set<Id> boxes) {
        return Planner.plan(question.with(only(boxes)), currency, BOXES, cancel, progress).plan();
    }

    /** The boxes that are cheapest for the stages up to each one, and for each alone: what little money buys first. */
    private Set<Id> early() {
        Set<Id> boxes = new TreeSet<>();
        for (int stage = 0; stage < question.stages().size() && !cancel.cancelled(); stage++) {
            int until = stage;
            for (List<Target> some : List.of(question.targets().stream().filter(one -> one.stage() <= until).toList(),
                    question.targets().stream().filter(one -> one.stage() == until).toList())) {
                once(some, EARLY).plan().ifPresent(plan -> boxes.addAll(plan.boxes().keySet()));
            }
        }
        return boxes;
    }

    private Answer whole(Optional<Plan> near, Optional<Money> floor, Limits work) {
        Answer all = Planner.plan(question, currency, work, cancel, progress);
        if (near.isEmpty() || all.plan().filter(plan -> plan.proven() || !near.get().total().isLessThan(plan.total())).isPresent()) {
            return all;
        }
        Money bound = all.bound().filter(one -> floor.isEmpty() || floor.get().isLessThan(one)).or(() -> floor)
                .orElse(near.get().bound());
        return new Answer(Optional.of(told(near.get(), bound, false)), false, Optional.of(bound), all.findings());
    }

    /**
     * What is built anew for each stage is built anew for each list where all is bought at once: that can do no less, and the
     * same where each stage has one list.
     */
    private static Supply rebuilt(Supply supply) {
        return new Supply(supply.stacks(), supply.frames().stream().map(one -> one.fixing() != Fixing.LOOSE_AT_BENCH ? one
                : new Frames(one.part(), one.count(), one.guessed(), one.ways(), one.built(), Fixing.LOOSE_BETWEEN_GAMES)).toList(),
                supply.caps(), supply.findings());
    }

    private static Market rebuilt(Market market) {
        return new Market(market.catalogue(), market.wares().stream().map(one -> new Ware(one.line(), one.box(), one.boxes(),
                one.title(), one.code(), one.seller(), one.price(), one.cost(), one.most(), rebuilt(one.load()), one.pieces()))
                .toList(), market.terms(), market.unpriced(), market.findings());
    }

    private static Plan told(Plan plan, Money bound, boolean settled) {
        return plan.told(!bound.isLessThan(plan.total()), settled, bound);
    }

    /** All of it bought at once, with no end of money and time. */
    Answer once(List<Target> targets, Limits limits) {
        return Planner.plan(now(targets), currency, limits, cancel, progress);
    }

    /** What all of it costs at the least if it is bought at once, as far as that is known after so much work. */
    Money floor(List<Target> targets, Limits limits) {
        Outcome outcome = Solver.solve(new Formulation(now(targets)).programme(), limits, cancel, Progress.SILENT);
        return Money.ofMinor(currency, outcome.state() == Outcome.State.IMPOSSIBLE ? UNHEARD : Math.max(0, outcome.bound()));
    }

    private Question now(List<Target> targets) {
        List<Target> now = targets.stream().map(one -> new Target(one.id(), one.title(), one.person(), 0, one.needs(),
                one.allowance(), one.choice().map(choice -> new Target.Choice(choice.of(), choice.points(), Optional.empty()))))
                .toList();
        return new Question(market, shelves, now, List.of(Stage.OPEN), false, question.atLeast());
    }

    /** How little a list by itself is at the bench, whatever it costs; empty if that was not found. */
    OptionalLong work(Target target, Limits limits) {
        Stage idle = Stage.OPEN.with(new Bench(question.stages().stream().flatMap(stage -> stage.bench().stream())
                .map(Bench::measure).findFirst().orElseThrow(), 0));
        Target now = new Target(target.id(), target.title(), target.person(), 0, target.needs(), target.allowance(), Optional.empty());
        Outcome least = Solver.solve(Formulation.atTheBench(question.with(List.of(now)).with(List.of(idle), false), 0, cancel)
                .programme(), limits, cancel, Progress.SILENT);
        return least.found() ? OptionalLong.of(least.cost()) : OptionalLong.empty();
    }

    private Market only(Set<Id> boxes) {
        return question.market().without(question.market().byBox().keySet().stream().filter(box -> !boxes.contains(box)).toList());
    }
}
