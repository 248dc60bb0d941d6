package org.cantonment.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Occasion;
import org.cantonment.references.LeastChangeModel;
import org.cantonment.references.Trial;
import org.cantonment.references.Trials;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** The least change of a list in each of three eras, to the proof; beside CP-SAT of OR-Tools, which is asked the same. */
final class Change {
    private static final int WARM = 3;

    private Change() {
    }

    static List<Row> run() {
        LeastChangeModel.load();
        List<Row> rows = new ArrayList<>(run(20, 15));
        rows.addAll(run(40, 6));
        return rows;
    }

    private static List<Row> run(int units, int seeds) {
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < WARM + seeds; i++) {
            Trial trial = Trials.draw(i < WARM ? 100 + i : i - WARM, units);
            long begin = System.nanoTime();
            ours(trial);
            long middle = System.nanoTime();
            for (int era = 0; era < trial.eras().size(); era++) {
                LeastChangeModel.solve(trial, era);
            }
            long end = System.nanoTime();
            if (i >= WARM) {
                ours.add(middle - begin);
                reference.add(end - middle);
            }
        }
        String what = "least change, " + units + " units over 3 eras, ";
        return List.of(Row.at(0.5, what + "median, ms", ours, reference),
                Row.at(0.95, what + "slowest, ms", ours, reference));
    }

    private static void ours(Trial trial) {
        Ruling written = ruling(trial, trial.written());
        for (int era = 0; era < trial.eras().size(); era++) {
            Found found = LeastChange.search(ruling(trial, era), written, trial.list(),
                    Situation.BARE.withPoints(trial.points(), Optional.empty()), Fielding.ALL, 1, LeastChange.MOST);
            if (!found.complete()) {
                throw new IllegalStateException("The search for the least change was not finished");
            }
        }
    }

    private static Ruling ruling(Trial trial, int era) {
        return RulingCompiler.compile(List.of(trial.book()), Occasion.in(trial.eras().get(era)));
    }
}
