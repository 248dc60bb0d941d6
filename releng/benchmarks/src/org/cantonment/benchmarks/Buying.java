package org.cantonment.benchmarks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.google.ortools.Loader;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.growth.Brief;
import org.cantonment.buying.growth.Composer;
import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Guide;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.references.buying.Campaigns;
import org.cantonment.references.buying.Errand;
import org.cantonment.references.buying.Errands;
import org.cantonment.references.buying.NaiveModel;
import org.cantonment.references.buying.ScipModel;
import org.joda.money.CurrencyUnit;

/**
 * Buying plans, from the records to the proven plan with its turnouts, beside SCIP on the model that our own reductions
 * leave; how many have their ties settled; how soon one that is cancelled is back, and the heap it takes.
 */
final class Buying {
    private static final int SEEDS = 7;
    private static final int ROUNDS = 8;
    private static final double NAIVE_SECONDS = 10;
    private static final long LIMIT = 60_000;

    private Buying() {
    }

    static List<Row> run() throws IOException {
        Loader.loadNativeLibraries();
        plan(Errands.large(200, 150, 3, 99).question(), CancelToken.NEVER);
        List<Row> rows = new ArrayList<>();
        size(200, 150, 3, rows);
        size(500, 300, 6, rows);
        size(2_000, 1_000, 6, rows);
        growth(rows);
        rows.addAll(BuyingLimits.run());
        return rows;
    }

    static Answer plan(Question question, CancelToken cancel) {
        return Planner.plan(question, CurrencyUnit.EUR, cancel, Progress.SILENT);
    }

    private static void size(int boxes, int types, int lists, List<Row> rows) {
        List<Long> whole = new ArrayList<>();
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        int open = 0;
        String name = "buying plan " + boxes + "/" + types + "/" + lists;
        for (long seed = 0; seed < SEEDS; seed++) {
            Errand errand = Errands.large(boxes, types, lists, seed);
            long start = System.nanoTime();
            Answer answer = plan(errand.question(), CancelToken.NEVER);
            whole.add(System.nanoTime() - start);
            if (!answer.impossible() && !answer.plan().orElseThrow().proven()) {
                throw new IllegalStateException(name + " was not proven with seed " + seed);
            }
            open += answer.plan().map(one -> one.settled() ? 0 : 1).orElse(0);
            Programme programme = new Formulation(errand.question()).programme();
            start = System.nanoTime();
            Solver.solve(programme, Limits.WIDE, CancelToken.NEVER, Progress.SILENT);
            ours.add(System.nanoTime() - start);
            List<Programme> parts = Solver.reduced(programme);
            start = System.nanoTime();
            parts.forEach(part -> ScipModel.solve(part, LIMIT));
            reference.add(System.nanoTime() - start);
        }
        rows.add(Row.at(0.5, name + ", all of it, ms (1000 allowed)", whole, List.of(1_000_000_000L)));
        rows.add(Row.at(0.5, name + ", search and SCIP, ms", ours, reference));
        rows.add(new Row(name + ", ties not settled", open, SEEDS));
        rows.add(worst(name + ", slowest beside SCIP, ms", ours, reference));
    }

    private static Row worst(String measure, List<Long> ours, List<Long> reference) {
        Row worst = null;
        for (int i = 0; i < ours.size(); i++) {
            Row row = new Row(measure, ours.get(i) / 1e6, reference.get(i) / 1e6);
            worst = worst == null || row.ratio() > worst.ratio() ? row : worst;
        }
        return worst;
    }

    /** Eight rounds with composed lists, from the wish to the plan, beside what is allowed, and beside CP-SAT on a naive model. */
    private static void growth(List<Row> rows) {
        List<Long> times = new ArrayList<>();
        List<Long> naive = new ArrayList<>();
        int proven = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Errand errand = Errands.large(200, 150, 3, seed);
            Question about = errand.question();
            List<Brief> briefs = Campaigns.rounds(errand, ROUNDS, seed);
            long start = System.nanoTime();
            Composer.Composed composed = Composer.compose(briefs, Optional.empty(), Guide.of(about.market(), about.shelves().get(0)),
                    CancelToken.NEVER, Progress.SILENT);
            Question question = new Question(about.market(), about.shelves(), composed.targets(),
                    Collections.nCopies(ROUNDS, Stage.OPEN), false, Map.of());
            Growth growth = Grower.grow(question, CurrencyUnit.EUR, CancelToken.NEVER, Progress.SILENT);
            times.add(System.nanoTime() - start);
            Plan plan = growth.answer().plan().orElseThrow();
            proven += plan.proven() ? 1 : 0;
            List<List<Requirement>> lists = plan.fielded().stream().map(Target::needs).toList();
            start = System.nanoTime();
            NaiveModel.solve(new Errand(errand.range(), errand.shelf(), lists, errand.card()), NAIVE_SECONDS);
            naive.add(System.nanoTime() - start);
        }
        rows.add(Row.at(0.5, "growth plan, 8 rounds composed, ms (10000 allowed)", times, List.of(10_000_000_000L)));
        rows.add(Row.at(0.99, "growth plan, slowest, ms (10000 allowed)", times, List.of(10_000_000_000L)));
        rows.add(Row.at(0.5, "growth plan, and its lists bought at once by CP-SAT, ms", times, naive));
        rows.add(new Row("growth plans proven for their lists, of all", proven, SEEDS));
    }
}
