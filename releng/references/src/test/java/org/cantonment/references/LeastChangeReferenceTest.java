package org.cantonment.references;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Occasion;
import org.cantonment.references.LeastChangeModel.Optimum;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The least change beside CP-SAT of OR-Tools, on lists of 6 to 40 units drawn from fixed seeds: the same points moved, and
 * the same units touched.
 */
class LeastChangeReferenceTest {

    @BeforeAll
    static void load() {
        LeastChangeModel.load();
    }

    @Test
    void listsOfSixUnits() {
        assertTrue(compare(6, 25) > 20);
    }

    @Test
    void listsOfTwentyUnits() {
        assertTrue(compare(20, 8) > 10);
    }

    @Test
    void listsOfThirtyUnits() {
        assertTrue(compare(30, 4) > 4);
    }

    @Test
    void listsOfFortyUnits() {
        assertTrue(compare(40, 3) > 3);
    }

    /** How many of them ask for a change. */
    private static int compare(int units, int seeds) {
        int changed = 0;
        for (int seed = 0; seed < seeds; seed++) {
            Trial trial = Trials.draw(seed, units);
            Ruling written = ruling(trial, trial.written());
            for (int era = 0; era < trial.eras().size(); era++) {
                String name = units + " units, seed " + seed + ", era " + era;
                Found found = LeastChange.search(ruling(trial, era), written, trial.list(),
                        Situation.BARE.withPoints(trial.points(), Optional.empty()), Fielding.ALL, 1, LeastChange.MOST);
                assertTrue(found.complete(), name);
                Optimum optimum = LeastChangeModel.solve(trial, era);
                if (optimum == null) {
                    assertEquals(List.of(), found.answers(), name);
                    continue;
                }
                Answer answer = found.answers().get(0);
                assertEquals(List.of(optimum.moved(), optimum.units()), List.of(answer.moved(), (long) answer.units()),
                        name + " " + answer.actions());
                changed += answer.units() > 0 ? 1 : 0;
            }
        }
        return changed;
    }

    private static Ruling ruling(Trial trial, int era) {
        return RulingCompiler.compile(List.of(trial.book()), Occasion.in(trial.eras().get(era)));
    }
}
