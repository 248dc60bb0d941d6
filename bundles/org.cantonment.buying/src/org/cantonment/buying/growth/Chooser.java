package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

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

/**
 * Chooses among composed lists. First the foremost list of each stage makes a plan, so that there is one; then all lists are
 * asked about together, for as long as that is worth while; and where that was not enough, one stage after the other is asked
 * about, the others standing still, until none gets better.
 */
final class Chooser {

    /** So much work is worth while for all lists together, and for those of one stage. */
    private static final Limits TOGETHER = new Limits(25_000, 20_000);
    private static final Limits STAGE = new Limits(6_000, 20_000);
    private static final int PASSES = 2;

    private final Question question;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Progress progress;
    private final TreeMap<Integer, List<Target>> choices = new TreeMap<>();
    private final List<Target> given = new ArrayList<>();

    /**
     * What was chosen.
     *
     * @param chosen one list of each stage where any stood to choose; empty if there is no plan
     * @param best whether the plan is proven to be the best of all that there was to choose from
     */
    record Chosen(Answer answer, Map<Integer, Target> chosen, boolean best) {
    }

    Chooser(Question question, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        this.question = question;
        this.currency = currency;
        this.cancel = cancel;
        this.progress = progress;
        for (Target target : question.targets()) {
            if (target.choice().isPresent()) {
                choices.computeIfAbsent(target.stage(), key -> new ArrayList<>()).add(target);
            } else {
                given.add(target);
            }
        }
    }

    Chosen choose() {
        Optional<Answer> best = Optional.empty();
        for (boolean last : new boolean[] {false, true}) {
            Optional<Map<Integer, Target>> chain = chain(last);
            if (best.isEmpty() && chain.isPresent()) {
                best = Optional.of(ask(only(chain.get()), STAGE)).filter(answer -> answer.plan().isPresent());
            }
        }
        Answer all = ask(question.targets(), TOGETHER);
        boolean proven = all.impossible() || all.plan().filter(Plan::proven).isPresent();
        if (proven || best.isEmpty()) {
            return new Chosen(all, all.plan().map(this::chosen).orElse(Map.of()), proven);
        }
        best = all.plan().isPresent() && better(all, best.get()) ? Optional.of(all) : best;
        Answer found = improved(best.get());
        return new Chosen(found, chosen(found.plan().orElseThrow()), false);
    }

    private Answer ask(List<Target> targets, Limits limits) {
        return Planner.plan(question.with(targets), currency, limits, cancel, progress);
    }

    private List<Target> only(Map<Integer, Target> chain) {
        List<Target> targets = new ArrayList<>(given);
        targets.addAll(chain.values());
        return targets;
    }

    private Map<Integer, Target> chosen(Plan plan) {
        Map<Integer, Target> chosen = new LinkedHashMap<>();
        plan.fielded().stream().filter(target -> target.choice().isPresent()).forEach(target ->
                chosen.put(target.stage(), target));
        return chosen;
    }

    private static boolean better(Answer one, Answer other) {
        Plan plan = one.plan().orElseThrow();
        Plan best = other.plan().orElseThrow();
        int order = plan.total().compareTo(best.total());
        return order < 0 || order == 0 && (plan.left() < best.left() || plan.left() == best.left() && points(plan) > points(best));
    }

    private static int points(Plan plan) {
        return plan.fielded().stream().mapToInt(target -> target.choice().map(Target.Choice::points).orElse(0)).sum();
    }

    private Answer improved(Answer from) {
        Answer best = from;
        boolean better = true;
        for (int pass = 0; pass < PASSES && better; pass++) {
            better = false;
            for (int stage : choices.descendingKeySet()) {
                if (!cancel.cancelled()) {
                    Map<Integer, Target> others = chosen(best.plan().orElseThrow());
                    others.remove(stage);
                    List<Target> targets = only(others);
                    targets.addAll(choices.get(stage));
                    Answer next = ask(targets, STAGE);
                    if (next.plan().isPresent() && better(next, best)) {
                        best = next;
                        better = true;
                    }
                }
            }
        }
        return best;
    }

    /** One list for each stage, each of which may follow the one before: the foremost, or the hindmost. */
    private Optional<Map<Integer, Target>> chain(boolean hindmost) {
        Map<Integer, List<Target>> open = new TreeMap<>();
        Set<Id> before = new HashSet<>();
        for (Map.Entry<Integer, List<Target>> stage : choices.entrySet()) {
            Set<Id> reached = before;
            List<Target> here = stage.getValue().stream().filter(target -> follows(target, reached)).toList();
            if (here.isEmpty()) {
                return Optional.empty();
            }
            open.put(stage.getKey(), here);
            before = new HashSet<>();
            for (Target target : here) {
                before.add(target.id());
            }
        }
        Map<Integer, Target> chain = new TreeMap<>();
        Optional<Target> next = Optional.empty();
        for (int stage : new TreeMap<>(open).descendingKeySet()) {
            List<Target> here = open.get(stage);
            Optional<Set<Id>> after = next.filter(one -> one.stage() == stage + 1).flatMap(one -> one.choice().orElseThrow().after());
            List<Target> fit = here.stream().filter(target -> after.isEmpty() || after.get().contains(target.id())).toList();
            Target one = fit.get(hindmost ? fit.size() - 1 : 0);
            chain.put(stage, one);
            next = Optional.of(one);
        }
        return Optional.of(chain);
    }

    private static boolean follows(Target target, Set<Id> before) {
        return target.choice().orElseThrow().after().map(after -> after.stream().anyMatch(before::contains)).orElse(true);
    }
}
