package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.buying.growth.Brief;
import org.cantonment.buying.growth.Composer;
import org.cantonment.buying.growth.Composer.Composed;
import org.cantonment.buying.growth.Composer.Miss;
import org.cantonment.buying.growth.Composer.Next;
import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Guide;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Situation;
import org.cantonment.stock.supply.Supply;

/** Makes a growth plan out of rounds: written lists as they are, the others composed. For one player. */
final class GrowPlanner {
    private static final int HUNDRED = 100;
    private static final Limits ALONE = new Limits(3_000, 5_000);

    private final String title;
    private final Aims aims;
    private final Shops shops;
    private final Supply shelf;
    private final CancelToken cancel;
    private final Progress progress;
    private final Earlier earlier;
    private final List<Target> targets = new ArrayList<>();
    private final List<Target> more = new ArrayList<>();
    private final Map<Id, ForceList> lists = new LinkedHashMap<>();
    private final Map<Integer, List<String>> out = new TreeMap<>();
    private final List<String> remarks = new ArrayList<>();

    GrowPlanner(String title, Aims aims, Shops shops, Supply shelf, Earlier earlier, CancelToken cancel, Progress progress) {
        this.title = title;
        this.earlier = earlier;
        this.aims = aims;
        this.shops = shops;
        this.shelf = shelf;
        this.cancel = cancel;
        this.progress = progress;
    }

    /**
     * The plan. Where a written list cannot be fielded whatever it costs, it goes on without it.
     *
     * @param percent what a composed list uses of its limit at the least
     */
    GrowPlan plan(List<Turn> turns, Wishes wishes, int percent, List<Stage> stages, boolean saved) throws Unclear {
        targets(turns, wishes, percent);
        Question question = new Question(shops.market(), shelf, targets, stages, saved, Map.of());
        List<Target> possible = possible(question);
        Growth growth = Grower.grow(question.with(possible), shops.currency(), cancel, progress);
        if (growth.answer().plan().isEmpty() && !more.equals(targets) && !cancel.cancelled()) {
            List<Target> all = new ArrayList<>(more);
            all.removeIf(target -> target.choice().isEmpty() && !possible.contains(target));
            Growth unwise = Grower.grow(question.with(all), shops.currency(), cancel, progress);
            if (unwise.answer().plan().isPresent()) {
                remarks.add("With the lists that there are fewest cautions about there is no plan for this money; so others are"
                        + " taken, and the cautions stand with them.");
                return new GrowPlan(unwise, more, lists, out, remarks);
            }
        }
        return new GrowPlan(growth, targets, lists, out, remarks);
    }

    /** The targets that can be had at all; of the others it is said why not. */
    private List<Target> possible(Question question) {
        List<Target> possible = new ArrayList<>();
        List<Stage> open = question.stages().stream().map(Stage::withoutBudget).toList();
        for (Target target : question.targets()) {
            Answer alone = target.choice().isPresent() ? null : Planner.plan(question.with(List.of(target)).with(open, false),
                    shops.currency(), ALONE, cancel, Progress.SILENT);
            if (alone == null || !alone.impossible()) {
                possible.add(target);
            } else {
                List<String> why = new ArrayList<>(alone.findings().stream().filter(one -> !one.code().equals(Shops.NO_RATE))
                        .map(Finding::message).distinct().toList());
                alone.findings().stream().filter(one -> one.code().equals("buying.no-price")).flatMap(finding ->
                        target.needs().stream().filter(need -> need.entry().equals(finding.at()))).distinct()
                        .forEach(need -> new SaleDays(shops).of(target.allowance().accepted(shops.market().catalogue(),
                                need.anyOf(), need.unit()).types().keySet()).stream().filter(one -> !why.contains(one))
                                .forEach(why::add));
                out.put(target.stage(), why);
            }
        }
        return possible;
    }

    private void targets(List<Turn> turns, Wishes wishes, int percent) throws Unclear {
        List<Brief> run = new ArrayList<>();
        for (int stage = 0; stage < turns.size(); stage++) {
            Turn turn = turns.get(stage);
            if (turn.written().isPresent()) {
                compose(run, turns);
                Target target = aims.of(turn.written().get(), stage).target();
                targets.add(target);
                more.add(target);
                lists.put(turn.written().get().id(), turn.written().get());
            } else {
                run.add(brief(turn, stage, percent, wishes));
            }
        }
        compose(run, turns);
    }

    private Brief brief(Turn turn, int stage, int percent, Wishes wishes) {
        Situation situation = earlier.of(stage, Map.of()).withCancel(cancel);
        int least = (int) (situation.points().orElseThrow() * (long) percent / HUNDRED);
        return new Brief(turn.about().list().id(), title + ", round " + turn.round().number(), stage,
                turn.about().ruling().orElseThrow(), situation, aims.allowance(turn.about().list(), turn.about().ruling().get()), least, wishes.in(turn.round().number()));
    }

    private void compose(List<Brief> run, List<Turn> turns) {
        if (run.isEmpty()) {
            return;
        }
        Composed composed = Composer.compose(run, next(run.get(run.size() - 1).stage() + 1, turns), Guide.of(shops.market(), shelf),
                cancel, progress);
        targets.addAll(composed.targets());
        more.addAll(composed.more());
        lists.putAll(composed.lists());
        composed.misses().forEach(miss -> out.put(miss.stage(), List.of(missed(miss, turns.get(miss.stage())))));
        if (!composed.unwished().isEmpty()) {
            remarks.add("No list that was tried is legal with what is wished for first in "
                    + PlanText.and(composed.unwished().stream().map(stage -> "round " + turns.get(stage).round().number()).toList())
                    + "; there it is left aside.");
        }
        run.clear();
    }

    /** The written list that comes after those that are composed. */
    private Optional<Next> next(int stage, List<Turn> turns) {
        if (stage >= turns.size() || !earlier.follows(stage)) {
            return Optional.empty();
        }
        Turn turn = turns.get(stage);
        return turn.written().map(list -> new Next(turn.about().ruling().orElseThrow(), earlier.of(stage, Map.of()), list));
    }

    private static String missed(Miss miss, Turn turn) {
        String lead = "No legal list was found for round " + turn.round().number() + " that uses enough of its "
                + turn.about().situation().points().orElseThrow() + " points";
        if (miss.tried() == 0) {
            return lead + ": no formation fits into them with what it must have, by the rules and the wishes.";
        }
        return lead + "; " + (miss.proven() ? "all " : "") + miss.tried() + (miss.tried() == 1 ? " was tried" : " were tried")
                + miss.reason().map(rule -> ", and most often this stood in the way: " + rule).orElse("") + ".";
    }
}
