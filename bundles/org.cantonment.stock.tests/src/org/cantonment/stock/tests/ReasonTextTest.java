package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.lets;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Things.oneTable;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.ReasonText;
import org.junit.jupiter.api.Test;

/** Reasons as they are read. */
class ReasonTextTest {

    private static List<String> say(Depot depot, Requirement... needs) {
        return depot.turnout(Arrays.asList(needs), CancelToken.NEVER).reasons().stream()
                .map(reason -> ReasonText.of(reason, Id::name)).toList();
    }

    @Test
    void aBlockIsCounted() {
        Depot depot = new Things().piece("Gun", null).piece("Long", null).has("4 Gun").has("2 Long").has("unknown 3 Gun")
                .depot(lets("Long", "Gun"));
        assertEquals(List.of("Troop and Staff together need 8; all that may stand for them is 6: 4 Gun and 2 Long. "
                + "There may be up to 3 Gun more, which nobody has counted. Short by 2."),
                say(depot, need("Troop", 5, "Gun"), need("Staff", 3, "Gun")));
        assertEquals(List.of("Odd needs 2 of Boat or Raft; nothing there may stand for that. Short by 2."),
                say(depot, need("Odd", 2, "Boat", "Raft")));
    }

    @Test
    void framesAreCounted() {
        Depot depot = new Things().piece("Spotter", null).piece("Carrier", null).part("Frame", "2 Spotter", "3 Carrier")
                .has("2 Frame").depot();
        assertEquals(List.of("Out of 2 of Frame, 3 for A take 2 at 2 each and 1 for B take 1 at 3 each: that takes 3. Short "
                + "by 1."), say(depot, need("A", 3, "Spotter"), need("B", 1, "Carrier")));
        Depot one = new Things().piece("Spotter", null).part("Frame", "2 Spotter").has("2 Frame").depot();
        assertEquals(List.of("A needs 5; all that may stand for it is 4: 4 out of 2 of Frame. Short by 1."),
                say(one, need("A", 5, "Spotter")));
    }

    @Test
    void meaningsAreToldApart() {
        Depot depot = new Things().piece("Crank", null).piece("Tread", null).has("5 Crank")
                .depot(lets("Crank", "Tread"), oneTable());
        assertEquals(List.of("What stands for itself stands for nothing else: with Crank as itself, Treads lack 2; with "
                + "Crank as something else, Cranks lack 3. Short by 2."),
                say(depot, need("Cranks", 3, "Crank"), need("Treads", 2, "Tread")));
    }

    @Test
    void aSearchSaysWhetherItIsDone() {
        List<Requirement> needs = List.of(need("A", 3, "Spotter"), need("B", 1, "Carrier"));
        assertEquals("Every way to build and place the pieces for A and B was ruled out. Short by 1.",
                ReasonText.of(new Reason.Searched(needs, 1, 1, 20), Id::name));
        assertEquals("For A and B the best found is short by 4; no way is short by less than 1.",
                ReasonText.of(new Reason.Searched(needs, 4, 1, 20), Id::name));
    }
}
