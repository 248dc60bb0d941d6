package org.cantonment.references.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

import com.google.ortools.Loader;

import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Planner;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.range.Fixing;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Plans in stages with an end of time at the bench beside CP-SAT of OR-Tools, on errands drawn from fixed seeds: the same
 * least cost, none where there is none, and the same shortage of the first stage that cannot be done.
 */
class BenchReferenceTest {

    private static final int SEEDS = 300;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @Test
    void stagesWithAnEndOfTime() {
        int possible = 0;
        int dearer = 0;
        int lacking = 0;
        Set<Fixing> fixings = new TreeSet<>();
        for (long seed = 0; seed < SEEDS; seed++) {
            BenchErrand errand = BenchErrands.draw(seed);
            OptionalLong optimum = BenchModel.cost(errand);
            Answer answer = Planner.plan(errand.question(), CurrencyUnit.EUR, CancelToken.NEVER, Progress.SILENT);
            assertEquals(optimum.isEmpty(), answer.impossible(), "seed " + seed);
            OptionalLong idle = BenchModel.cost(errand.idle());
            if (optimum.isPresent()) {
                possible++;
                dearer += optimum.getAsLong() > idle.getAsLong() ? 1 : 0;
                errand.range().parts().forEach(part -> fixings.add(part.fixing()));
                assertTrue(answer.plan().orElseThrow().proven(), "seed " + seed);
                assertEquals(optimum.getAsLong(), answer.plan().get().total().getAmountMinorLong(), "seed " + seed);
            } else if (idle.isPresent()) {
                lacking++;
                shortage(errand, answer, seed);
            }
        }
        String drawn = possible + " can be done, " + dearer + " of them dearer for want of time, " + lacking + " cannot";
        assertTrue(possible > 150 && dearer > 15 && lacking > 35, drawn);
        assertEquals(Set.of(Fixing.values()), fixings);
    }

    private static void shortage(BenchErrand errand, Answer answer, long seed) {
        int stage = 0;
        while (BenchModel.cost(errand.until(stage)).isPresent()) {
            stage++;
        }
        int first = stage;
        String words = errand.stages().get(stage).bench().isEmpty() ? "list " + stage + " has too little time at the bench."
                : BenchModel.lacking(errand.until(stage), stage).stream().mapToObj(more -> "list " + first + " is "
                        + errand.stages().get(first).bench().get().words(more) + " short at the bench;").findFirst()
                                .orElse("list " + stage + " has too little time at the bench.");
        List<String> said = answer.findings().stream().filter(one -> one.code().equals("buying.bench"))
                .map(Finding::message).toList();
        assertEquals(1, said.size(), "seed " + seed + ": " + answer.findings());
        String message = said.get(0);
        assertTrue(message.startsWith(words), "seed " + seed + ": '" + words + "', but '" + message + "'");
    }
}
