package org.cantonment.buying.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.buying.reach.Near;
import org.cantonment.buying.reach.Reach;
import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** How far a shelf is from formations, by hand and against every filling there is. */
class ReachTest {

    @Test
    void noFillingIsNearer() {
        int now = 0;
        int away = 0;
        int never = 0;
        for (int seed = 0; seed < 600; seed++) {
            ReachCase drawn = new ReachCase(seed);
            Catalogue catalogue = drawn.shop.market().catalogue();
            Depot depot = Depot.of(catalogue, drawn.supply, drawn.allowance);
            for (Strength strength : Strength.values()) {
                Set<Map<List<Id>, Integer>> fillings = drawn.fillings(Id.of("Book", "Whole"), strength);
                if (fillings.size() > 150) {
                    continue;
                }
                Optional<Near> near = new Reach(catalogue, drawn.supply).near(drawn.asked(strength), CancelToken.NEVER);
                OptionalInt least = fillings.stream().map(one -> depot.turnout(ReachCase.needs(one), CancelToken.NEVER))
                        .mapToInt(Turnout::lacking).min();
                String about = "seed " + seed + ", " + strength;
                assertEquals(least.isPresent(), near.isPresent(), about);
                if (near.isEmpty()) {
                    never++;
                    continue;
                }
                assertEquals(least.getAsInt(), near.get().lacking(), about);
                assertTrue(near.get().proven(), about);
                now += near.get().lacking() == 0 ? 1 : 0;
                away += near.get().lacking() > 0 ? 1 : 0;
            }
        }
        assertTrue(now > 100 && away > 300 && never > 50, now + " now, " + away + " away, " + never + " never");
    }
}
