package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Chooses among composed lists. Where there are few, all are asked about together. Where there are many, the foremost list of
 * each stage makes a beginning; then one stage after the other is asked about, the lists of the others standing, until the
 * whole gets no cheaper. If what is chosen so does not fit the budgets, the lists are taken that cost least by themselves, and
 * if that does not fit the hours, those that are least work by themselves.
 */
final class Chooser {

    private static final int FEW = 36;
    private static final Limits TOGETHER = new Limits(8_000, 20_000);
    private static final Limits STAGE = new Limits(3_000, 5_000);
    private static final Limits FINAL = new Limits(12_000, 20_000);
    private static final int PASSES = 2;
    private static final int TRIED = 5;

    private final Question question;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Progress progress;
    private final Stages stages;
    private final TreeMap<Integer, List<Target>> choices = new TreeMap<>();
    private final List<Target> given = new ArrayList<>();
    private final Map<Id, Map<Id, Integer>> needs = new HashMap<>();
    private final Map<Set<Id>, Money> floors = new HashMap<>();
    private final Guide guide;

    /**
     * What was chosen.
     *
     * @param targets all that are to stand: those given, and one of each choice
     * @param best whether it is proven that nothing else that there was to choose from costs less
     */
    record Chosen(Answer answer, List<Target> targets, boolean best) {
    }

    Chooser(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        this.question = question;
        this.currency = currency;
        this.cancel = cancel;
        this.progress = progress;
        stages = new Stages(question, currency, cancel, Progress.SILENT);
        guide = Guide.of(question.market(), question.shelves().get(0));
        for (Target target : question.targets()) {
            if (target.choice().isPresent()) {
                choices.computeIfAbsent(target.stage(), key -> new ArrayList<>()).add(target);
            } else {
                given.add(target);
            }
        }
    }

    Chosen choose() {
        if (question.targets().size() - given.size() <= FEW) {
            Answer all = Planner.plan(question, currency, TOGETHER, cancel, progress);
            if (all.impossible() || all.plan().filter(Plan::proven).isPresent()) {
                return new Chosen(all, all.plan().map(Plan::fielded).orElseGet(() -> with(chain(Map.of()))), true);
            }
        }
        List<Target> lists = with(improved(chain(Map.of())));
        Answer answer = fixed(lists);
        if (answer.plan().isEmpty() && !cancel.cancelled()) {
            lists = with(chain(alone()));
            answer = fixed(lists);
        }
        if (answer.plan().isEmpty() && question.benched() && !cancel.cancelled()) {
            lists = with(chain(work()));
            answer = fixed(lists);
        }
        return new Chosen(answer, lists, false);
    }

    private Answer fixed(List<Target> lists) {
        return new Stages(question.with(lists), currency, cancel, progress).plan(FINAL);
    }

    private List<Target> with(Map<Integer, Target> chain) {
        List<Target> targets = new ArrayList<>(given);
        targets.addAll(chain.values());
        targets.sort(Comparator.comparingInt(Target::stage));
        return targets;
    }

    private static boolean better(Plan plan, Plan best) {
        int order = plan.total().compareTo(best.total());
        return order < 0 || order == 0 && (plan.left() < best.left() || plan.left() == best.left() && points(plan) > points(best));
    }

    private static int points(Plan plan) {
        return plan.fielded().stream().mapToInt(target -> target.choice().map(Target.Choice::points).orElse(0)).sum();
    }

    private Map<Integer, Target> improved(Map<Integer, Target> from) {
        Map<Integer, Target> best = new TreeMap<>(from);
        Plan plan = stages.once(with(best), STAGE).plan().orElse(null);
        boolean better = plan != null;
        for (int pass = 0; pass < PASSES && better; pass++) {
            better = false;
            for (int stage : choices.descendingKeySet()) {
                progress.at(choices.size() - stage, choices.size(), "Choosing lists");
                Map<Integer, Target> others = new TreeMap<>(best);
                others.remove(stage);
                if (!cancel.cancelled() && matters(others, plan)) {
                    for (Target one : promising(stage, others, best.get(stage))) {
                        Map<Integer, Target> tried = new TreeMap<>(others);
                        tried.put(stage, one);
                        Optional<Plan> next = floor(tried).isGreaterThan(plan.total()) ? Optional.empty()
                                : stages.once(with(tried), STAGE).plan();
                        if (next.isPresent() && better(next.get(), plan)) {
                            plan = next.get();
                            best.put(stage, one);
                            better = true;
                        }
                    }
                }
            }
        }
        return best;
    }

    /** Whether another list of a stage could make it cheaper: not where the others alone cost as much. */
    private boolean matters(Map<Integer, Target> others, Plan plan) {
        return plan.total().isPositive() && floor(others).isLessThan(plan.total());
    }

    /** What these cost at the least. */
    private Money floor(Map<Integer, Target> some) {
        return floors.computeIfAbsent(some.values().stream().map(Target::id).collect(Collectors.toSet()), key ->
                stages.floor(with(some), STAGE));
    }

    /** Lists of a stage that need least beyond what is there and what the others need, by about what that costs. */
    private List<Target> promising(int stage, Map<Integer, Target> others, Target now) {
        Map<Id, Integer> there = new HashMap<>();
        with(others).forEach(target -> needed(target).forEach((type, count) -> there.merge(type, count, Math::max)));
        Map<Id, Long> extra = new HashMap<>();
        List<Target> fit = choices.get(stage).stream().filter(target -> target != now && fits(target, others)).toList();
        for (Target target : fit) {
            Reckoner reckoner = new Reckoner(guide, target.allowance(), there);
            int[] have = new int[target.needs().size()];
            target.needs().forEach(need -> have[reckoner.slot(need.anyOf(), need.unit().orElse(need.entry()))] += need.count());
            extra.put(target.id(), reckoner.money(have));
        }
        return fit.stream().sorted(Comparator.comparingLong((Target target) -> extra.get(target.id()))
                .thenComparing(target -> -target.choice().orElseThrow().points()).thenComparing(Target::id)).limit(TRIED).toList();
    }

    /** What a list needs, by the types that would be bought for it. */
    private Map<Id, Integer> needed(Target target) {
        return needs.computeIfAbsent(target.id(), id -> {
            Map<Id, Integer> needed = new HashMap<>();
            target.needs().forEach(need -> guide.bought(guide.kinds(need.anyOf(), need.unit().orElse(need.entry()),
                    target.allowance())).ifPresent(type -> needed.merge(type, need.count(), Integer::sum)));
            return needed;
        });
    }

    private static boolean fits(Target target, Map<Integer, Target> others) {
        Target before = others.get(target.stage() - 1);
        Target next = others.get(target.stage() + 1);
        return (before == null || mayFollow(target, before)) && (next == null || mayFollow(next, target));
    }

    private static boolean mayFollow(Target target, Target before) {
        return target.choice().orElseThrow().after().map(after -> after.contains(before.id())).orElse(true);
    }

    /** How little each list by itself is at the bench. */
    private Map<Id, Long> work() {
        Map<Id, Long> work = new LinkedHashMap<>();
        choices.values().stream().flatMap(List::stream).forEach(target -> stages.work(target, STAGE)
                .ifPresent(least -> work.put(target.id(), least)));
        return work;
    }

    /** What each list costs by itself at the least, in minor units. */
    private Map<Id, Long> alone() {
        Map<Id, Long> alone = new LinkedHashMap<>();
        for (List<Target> some : choices.values()) {
            some.forEach(target -> alone.put(target.id(), stages.floor(List.of(target), STAGE).getAmountMinorLong()));
        }
        return alone;
    }

    /** One list for each stage, each of which may follow the one before: the cheapest, or the foremost. */
    private Map<Integer, Target> chain(Map<Id, Long> costs) {
        TreeMap<Integer, List<Target>> open = new TreeMap<>();
        Set<Id> before = new HashSet<>();
        for (Map.Entry<Integer, List<Target>> stage : choices.entrySet()) {
            Set<Id> reached = before;
            open.put(stage.getKey(), stage.getValue().stream().filter(target -> target.choice().orElseThrow().after()
                    .map(after -> after.stream().anyMatch(reached::contains)).orElse(true)).toList());
            before = new HashSet<>();
            for (Target target : open.get(stage.getKey())) {
                before.add(target.id());
            }
        }
        Map<Integer, Target> chain = new TreeMap<>();
        for (int stage : open.descendingKeySet()) {
            Target next = chain.get(stage + 1);
            Comparator<Target> cheap = Comparator.comparing((Target one) -> costs.containsKey(one.id()) ? 0 : 1)
                    .thenComparing(one -> costs.getOrDefault(one.id(), 0L));
            open.get(stage).stream().filter(target -> next == null || mayFollow(next, target)).min(cheap)
                    .ifPresent(target -> chain.put(stage, target));
        }
        return chain;
    }
}
