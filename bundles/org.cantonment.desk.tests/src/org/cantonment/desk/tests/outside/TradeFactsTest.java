package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.Requirements;
import org.junit.jupiter.api.Test;

/** Common practice, no source: what everybody in the trade takes for granted, in cases of our own. */
class TradeFactsTest {
    private final Books books = Books.of("trade");

    @Test
    void fiveOfOneVehicleMakeAHeadquartersOfTwoAndAPlatoonOfThree() {
        // Common practice, no source.
        assertEquals(List.of(), books.said("five"));
        Judged judged = books.judged("five");
        List<Requirement> needs = Requirements.of(judged.about().ruling().orElseThrow(), judged.about().list(), Map.of());
        long wagons = 0;
        for (Requirement need : needs) {
            assertEquals(List.of(Id.of("Kettle/Bell-Wagon")), need.anyOf());
            wagons += need.count();
        }
        assertEquals(5, wagons);
        assertEquals(List.of("fewer.list:5 [Bell-Platoon of 2] breach strength.not-offered by "
                + "bell.rules:12 [strength 3 for 15 points]"), books.said("fewer"));
    }

    @Test
    void anEmptySecondCompulsoryBilletIsABreach() {
        // Common practice, no source.
        assertEquals(List.of("no-platoon.list:3 [Bell-Company] breach billet.empty by "
                + "bell.rules:20 [billet Platoons 1 to 3 of Bell-Platoon]"), books.said("no-platoon"));
        assertEquals(List.of("Add Platoon of 3, 15 points."), books.mends("no-platoon", 0));
    }

    @Test
    void aUnitOfOneEraIsABreachInTheOthers() {
        // Common practice, no source.
        String rule = ".list:6 [Mud-Raft] breach era.only-in by bell.rules:17 [available in Slush]";
        assertEquals(List.of("raft-frost" + rule), books.said("raft-frost"));
        assertEquals(List.of(), books.said("raft-slush"));
        assertEquals(List.of("raft-dust" + rule), books.said("raft-dust"));
    }

    @Test
    void sumsAreThoseWorkedOutByHand() {
        // What is below the least strength is counted at the least.
        assertEquals(Map.of("five", 11 + 15L, "fewer", 11 + 15L, "no-platoon", 11L, "raft-frost", 33L, "raft-slush", 33L,
                "raft-dust", 33L), books.points());
        assertEquals(List.of(), books.saidOfBooks());
    }
}
