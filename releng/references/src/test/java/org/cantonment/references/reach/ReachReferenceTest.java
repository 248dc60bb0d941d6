package org.cantonment.references.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Near;
import org.cantonment.buying.reach.Reach;
import org.cantonment.domain.common.CancelToken;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How many pieces formations lack, beside CP-SAT of OR-Tools on a model of its own. */
class ReachReferenceTest {

    @BeforeAll
    static void load() {
        ReachModel.load();
    }

    @Test
    void formationsLackAsManyPieces() {
        int now = 0;
        int away = 0;
        for (long seed = 0; seed < 25; seed++) {
            Outlook outlook = Outlook.draw(10, 1, seed);
            Reach reach = new Reach(outlook.catalogue(), outlook.supply());
            for (Asked asked : outlook.asked()) {
                Optional<Near> near = reach.near(asked, CancelToken.NEVER);
                OptionalInt least = ReachModel.solve(outlook, asked);
                String about = "seed " + seed + ", " + asked.formation() + ", " + asked.strength();
                assertEquals(least.isPresent(), near.isPresent(), about);
                if (near.isPresent()) {
                    assertEquals(least.getAsInt(), near.get().lacking(), about);
                    assertTrue(near.get().proven(), about);
                    now += near.get().lacking() == 0 ? 1 : 0;
                    away += near.get().lacking() > 0 ? 1 : 0;
                }
            }
        }
        assertTrue(now > 50 && away > 50, now + " now, " + away + " away");
    }
}
