package org.cantonment.references.turnout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** What stands of large parades is what JGraphT's push-relabel says can stand. */
class ParadeTest {

    @Test
    void asManyStandAsTheGreatestFlowSays() {
        int shortOf = 0;
        for (long seed = 0; seed < 20; seed++) {
            Parade parade = Parade.draw(1_000, 400, 20, seed);
            Turnout turnout = Depot.of(parade.catalogue(), parade.supply(), parade.allowance())
                    .turnout(parade.needs(), CancelToken.NEVER);
            assertEquals(new ParadeFlow(parade).filled(), turnout.filled(), "seed " + seed);
            assertTrue(turnout.proven() && turnout.truest(), "seed " + seed);
            assertEquals(turnout.lacking(), turnout.reasons().stream().mapToInt(Reason::lacking).sum(), "seed " + seed);
            shortOf += turnout.lacking();
        }
        assertTrue(shortOf > 0);
    }
}
