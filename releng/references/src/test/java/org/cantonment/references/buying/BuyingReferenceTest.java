package org.cantonment.references.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import com.google.ortools.Loader;

import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Planner;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Buying plans beside CP-SAT and SCIP of OR-Tools, on errands drawn from fixed seeds: the same least cost, and none where
 * there is none.
 */
class BuyingReferenceTest {

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    @Test
    void smallErrandsWithEveryFeature() {
        int possible = 0;
        int seeds = 330;
        Map<String, Integer> drawn = new TreeMap<>();
        for (long seed = 0; seed < seeds; seed++) {
            Errand errand = Errands.small(seed);
            OptionalLong optimum = NaiveModel.solve(errand, 60);
            assertEquals(optimum, NaiveModel.scip(errand, 60_000), "CP-SAT and SCIP, seed " + seed);
            Answer answer = Planner.plan(errand.question(), CurrencyUnit.EUR, CancelToken.NEVER, Progress.SILENT);
            assertEquals(optimum.isEmpty(), answer.impossible(), "seed " + seed);
            if (optimum.isPresent()) {
                possible++;
                features(errand).forEach(feature -> drawn.merge(feature, 1, Integer::sum));
                assertTrue(answer.plan().orElseThrow().proven(), "seed " + seed);
                assertEquals(optimum.getAsLong(), answer.plan().get().total().getAmountMinorLong(), "seed " + seed);
            }
        }
        assertTrue(possible > 150, "enough of them can be done: " + possible);
        assertTrue(drawn.size() == 6 && drawn.values().stream().allMatch(count -> count > 15), "of each kind enough: " + drawn);
    }

    private static Set<String> features(Errand errand) {
        Set<String> features = new TreeSet<>();
        features.add(errand.lists().size() > 1 ? "several lists" : "one list");
        if (errand.range().parts().stream().anyMatch(part -> part.builds().size() > 1)) {
            features.add("choices of builds");
        }
        if (errand.range().boxes().stream().anyMatch(box -> !box.stock().isEmpty())) {
            features.add("ends of stock");
        }
        if (errand.card().facts().stream().anyMatch(Stands.class::isInstance)) {
            features.add("pairs of stand-ins");
        }
        if (errand.card().facts().stream().anyMatch(Turns.class::isInstance)) {
            features.add("conversions");
        }
        return features;
    }
}
