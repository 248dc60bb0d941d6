package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

import org.cantonment.buying.plan.Bench;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Build;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;

/**
 * An errand for the bench as plainly as it can be put, for CP-SAT: from stage to stage each part goes from one state to
 * another, unbuilt or built in one of its ways; each step takes the time of the way it leads to, and none where it stays.
 */
public final class BenchModel {

    private static final int MOST = 12;

    private final BenchErrand errand;
    private final CpModel model = new CpModel();
    private final List<LinearExprBuilder> costs = new ArrayList<>();
    private final List<Map<Id, LinearExprBuilder>> arriving = new ArrayList<>();
    private final List<Map<Id, LinearExprBuilder>> there = new ArrayList<>();
    private final List<LinearExprBuilder> work = new ArrayList<>();

    private BenchModel(BenchErrand errand) {
        this.errand = errand;
    }

    /** The least cost in cents; empty if there is no plan. */
    public static OptionalLong cost(BenchErrand errand) {
        return new BenchModel(errand).solve(-1);
    }

    /** How much more is needed at the bench of one stage at the least; empty if that alone would not do. */
    public static OptionalLong lacking(BenchErrand errand, int stage) {
        return new BenchModel(errand).solve(stage);
    }

    private OptionalLong solve(int helped) {
        for (int s = 0; s < errand.stages().size(); s++) {
            costs.add(LinearExpr.newBuilder());
            arriving.add(new HashMap<>());
            there.add(new HashMap<>());
            work.add(LinearExpr.newBuilder());
        }
        for (Box box : errand.range().boxes()) {
            for (int s = 0; s < errand.stages().size(); s++) {
                IntVar count = model.newIntVar(0, MOST, box.id() + " in " + s);
                costs.get(s).addTerm(count, box.prices().get(0).money().getAmountMinorLong());
                for (Content content : box.contents()) {
                    at(arriving.get(s), content.what()).addTerm(count, content.count());
                }
            }
        }
        for (Stack stack : errand.shelf().stacks()) {
            at(arriving.get(0), stack.what()).add(stack.counted());
        }
        errand.range().pieces().forEach(piece -> keep(piece.id()));
        errand.range().parts().forEach(this::build);
        for (int s = 0; s < errand.stages().size(); s++) {
            field(s);
        }
        budgets();
        return minimum(helped);
    }

    private static LinearExprBuilder at(Map<Id, LinearExprBuilder> sums, Id what) {
        return sums.computeIfAbsent(what, id -> LinearExpr.newBuilder());
    }

    /** What has come once is there in all later stages. */
    private void keep(Id type) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int s = 0; s < errand.stages().size(); s++) {
            if (arriving.get(s).containsKey(type)) {
                sum.add(arriving.get(s).get(type));
            }
            at(there.get(s), type).add(sum);
        }
    }

    private long weight(Part part, int way, int stage) {
        Measure measure = errand.stages().get(stage).bench().map(Bench::measure).orElse(Measure.MINUTES);
        Build build = part.builds().get(way);
        return measure == Measure.PARTS ? 1 : build.minutes().orElse(part.minutes().orElse(0));
    }

    private void build(Part part) {
        int states = part.builds().size() + 1;
        LinearExprBuilder[] now = new LinearExprBuilder[states];
        for (int state = 0; state < states; state++) {
            now[state] = LinearExpr.newBuilder();
            for (Frames frames : errand.shelf().frames()) {
                if (frames.part().equals(part.id()) && frames.built() + 1 == state) {
                    now[state].add(frames.count());
                }
            }
        }
        for (int s = 0; s < errand.stages().size(); s++) {
            if (arriving.get(s).containsKey(part.id())) {
                now[0].add(arriving.get(s).get(part.id()));
            }
            now = step(part, s, now);
            for (int way = 0; way < states - 1 && part.fixing() != Fixing.LOOSE_BETWEEN_GAMES; way++) {
                for (Content gives : part.builds().get(way).gives()) {
                    at(there.get(s), gives.what()).addTerm(LinearExpr.affine(now[way + 1], 1, 0), gives.count());
                }
            }
            if (part.fixing() == Fixing.LOOSE_BETWEEN_GAMES) {
                exchange(part, s, now);
            }
        }
    }

    private LinearExprBuilder[] step(Part part, int stage, LinearExprBuilder[] before) {
        int states = before.length;
        LinearExprBuilder[] leaving = new LinearExprBuilder[states];
        LinearExprBuilder[] after = new LinearExprBuilder[states];
        for (int state = 0; state < states; state++) {
            leaving[state] = LinearExpr.newBuilder();
            after[state] = LinearExpr.newBuilder();
        }
        for (int from = 0; from < states; from++) {
            for (int to = 0; to < states; to++) {
                boolean may = from == to || from == 0 || part.fixing() == Fixing.LOOSE_AT_BENCH && to > 0;
                if (may) {
                    IntVar count = model.newIntVar(0, 200, part.id() + " " + from + " to " + to + " in " + stage);
                    leaving[from].add(count);
                    after[to].add(count);
                    if (from != to) {
                        work.get(stage).addTerm(count, part.fixing() == Fixing.LOOSE_BETWEEN_GAMES ? longest(part, stage)
                                : weight(part, to - 1, stage));
                    }
                }
            }
        }
        for (int state = 0; state < states; state++) {
            model.addEquality(leaving[state], before[state]);
        }
        return after;
    }

    private long longest(Part part, int stage) {
        long longest = 0;
        for (int way = 0; way < part.builds().size(); way++) {
            longest = Math.max(longest, weight(part, way, stage));
        }
        return longest;
    }

    /** All that has been built may be anything in a stage's game. */
    private void exchange(Part part, int stage, LinearExprBuilder[] now) {
        LinearExprBuilder built = LinearExpr.newBuilder();
        for (int state = 1; state < now.length; state++) {
            built.add(now[state]);
        }
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (Build build : part.builds()) {
            IntVar count = model.newIntVar(0, 200, build.id() + " for the game in " + stage);
            used.add(count);
            for (Content gives : build.gives()) {
                at(there.get(stage), gives.what()).addTerm(count, gives.count());
            }
        }
        model.addLessOrEqual(used, built);
    }

    private void field(int stage) {
        Map<Id, LinearExprBuilder> used = new HashMap<>();
        for (Requirement need : errand.lists().get(stage)) {
            LinearExprBuilder filled = LinearExpr.newBuilder();
            need.anyOf().stream().distinct().forEach(type -> {
                IntVar count = model.newIntVar(0, need.count(), type + " for " + need.entry());
                filled.add(count);
                at(used, type).add(count);
            });
            model.addEquality(filled, need.count());
        }
        used.forEach((type, count) -> model.addLessOrEqual(count, at(there.get(stage), type)));
    }

    /** Money is saved up only if there is an end of it in every stage: without one, nothing need be saved. */
    private void budgets() {
        boolean endless = errand.stages().stream().anyMatch(stage -> stage.budget().isEmpty());
        LinearExprBuilder spent = LinearExpr.newBuilder();
        long had = 0;
        for (int s = 0; s < costs.size() && !(errand.saved() && endless); s++) {
            if (errand.stages().get(s).budget().isPresent()) {
                long budget = errand.stages().get(s).budget().get().getAmountMinorLong();
                spent.add(costs.get(s));
                had += budget;
                model.addLessOrEqual(errand.saved() ? LinearExpr.newBuilder().add(spent) : costs.get(s),
                        errand.saved() ? had : budget);
            }
        }
    }

    private OptionalLong minimum(int helped) {
        IntVar more = model.newIntVar(0, 1_000_000, "more");
        for (int s = 0; s < work.size(); s++) {
            LinearExprBuilder has = LinearExpr.newBuilder();
            if (s == helped) {
                has.add(more);
            }
            if (errand.stages().get(s).bench().isPresent()) {
                model.addLessOrEqual(work.get(s), has.add(errand.stages().get(s).bench().get().most()));
            }
        }
        LinearExprBuilder all = LinearExpr.newBuilder();
        costs.forEach(all::add);
        model.minimize(helped < 0 ? all : LinearExpr.newBuilder().add(more));
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(60).setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("The reference did not get done: " + status);
        }
        return OptionalLong.of(Math.round(solver.objectiveValue()));
    }
}
