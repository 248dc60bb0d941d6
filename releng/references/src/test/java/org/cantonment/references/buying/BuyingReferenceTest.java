package org.cantonment.references.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;

import com.google.ortools.Loader;

import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Planner;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Buying plans beside CP-SAT of OR-Tools, on errands drawn from fixed seeds: the same least cost, and none where there is
 * none.
 */
class BuyingReferenceTest {

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @Test
    void smallErrandsWithEveryFeature() {
        int possible = 0;
        int seeds = 420;
        for (long seed = 0; seed < seeds; seed++) {
            Errand errand = Errands.small(seed);
            OptionalLong optimum = NaiveModel.solve(errand, 60);
            Answer answer = Planner.plan(errand.question(), CurrencyUnit.EUR, CancelToken.NEVER, Progress.SILENT);
            assertEquals(optimum.isEmpty(), answer.impossible(), "seed " + seed);
            if (optimum.isPresent()) {
                possible++;
                assertTrue(answer.plan().orElseThrow().proven(), "seed " + seed);
                assertEquals(optimum.getAsLong(), answer.plan().get().total().getAmountMinorLong(), "seed " + seed);
            }
        }
        assertTrue(possible > 200, "enough of them can be done: " + possible);
    }
}
