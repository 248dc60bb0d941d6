package org.cantonment.desk.tests.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.view.Holdings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each form comes to what can be counted by hand in one small list. */
class FormsTest {

    private static final String LIST = "2 Squad; . Tread of 3, 2 Guns; . 2 Bike of 2; Squad; . 2 Tread of 5, Guns, Mast; . Bike of 4";

    /** By hand: 4 Tread (2 of 3, 2 of 5), 5 Bike (4 of 2, 1 of 4), 3 squads. Points: 2x28 + 2x43 + 4x6 + 12 = 178. */
    @ParameterizedTest
    @ValueSource(strings = {
        "count of Tread is 4", "count of Armour is 4", "count of Eyes is 5", "count of units is 9", "count of formations is 3",
        "count of Squad is 3", "count of Armour, Eyes is 9", "count of different units is 2",
        "strength of Tread is 16", "strength of units is 28", "strength of Squad is 28",
        "points of Tread is 142", "points of Eyes is 36", "points of units is 178", "points of Squad is 178", "points used is 178",
        "options on Tread is 8", "options on units is 8", "option Guns on Tread is 6", "option Mast on Tread is 2",
        "pieces of Officer is 4", "pieces of Wagons is 16", "pieces of Gun-Wagon is 0", "pieces of Gun-Wagon, Carrier is 16",
        "1 plus 2 times 3 is 7", "7 minus 2 minus 1 is 4", "7 divided by 2 is 3.5", "7 divided by 2 rounded up is 4",
        "1 plus 7 divided by 2 rounded down is 4", "2 times 7 divided by 4 rounded up times 3 is 12",
        "40 percent of points used is 71.2", "40 percent of points used rounded down is 71", "1 divided by 3 times 3 is 1",
        "9 but at most 7 is 7", "2 plus 3 but at least 7 is 7", "count of Tread minus 9 but at least 0 is 0",
        "1 is not 2", "3 is more than 2", "2 is less than 3", "2 is at least 2", "2 is at most 2", "yes", "not no",
        "not not yes", "yes is yes", "no is not yes", "1 is 1 and 2 is 2", "1 is 2 or 2 is 2", "not 1 is 2 and 2 is 2",
        "the round is 3", "the limit is 200", "the limit minus points used is 22", "the era is Late", "the era is Early, Late",
        "not the era is Early",
        "each Squad has count of Eyes is at least 1", "any Squad has count of Tread is 2", "each unit has its strength is at least 2",
        "any Tread has its options is 2", "each Squad has its points is at most 98 and its strength is at least 7",
        "each formation has count of formations is 0", "each Tread has count of units is 1",
        "count of Squad with count of Eyes is 2 is 2", "sum per Squad of count of Eyes is 5", "sum per Tread of its strength is 16",
        "greatest per unit of its points is 43", "least per Squad of strength of Eyes is 4",
        "sum per Squad of greatest per Tread of its strength is 11",
        "count of Armour in the list is 4", "count of Armour in the contingent is 4",
        "each Squad has count of Armour in the list is 4", "each Squad has count of Armour is at most 2" })
    void isSo(String line) {
        if (line.startsWith("count of Squad with")) {
            Pond named = Pond.limit("let Covered be " + line.replace(" is 2 is 2", " is 2") + "; always Covered is 2");
            assertTrue(tried(named), line);
            return;
        }
        assertTrue(tried(Pond.limit("always " + line)), line);
        if (!line.contains(" has ") && !line.contains(" and ") && !line.contains(" or ")) {
            assertFalse(tried(Pond.limit("always not " + line)), line);
        }
    }

    private static boolean tried(Pond pond) {
        return pond.list(LIST).in("Late", 3).to(200).situation(known -> known.withHoldings(Optional.empty(), kin())).so();
    }

    private static Map<Id, Id> kin() {
        return Map.of(Id.of("Quay", "Gun-Wagon"), Id.of("Quay", "Gun-Wagons"), Id.of("Quay", "Carrier"), Id.of("Quay", "Wagons"),
                Id.of("Quay", "Gun-Wagons"), Id.of("Quay", "Wagons"));
    }

    @Test
    void theShelfIsAskedIfItIsKnown() {
        String line = "always pieces of Wagons owned is at least 6 and pieces of Gun-Wagon painted is 2";
        Holdings shelf = new Holdings(Map.of(Id.of("Quay", "Gun-Wagon"), 4L, Id.of("Quay", "Carrier"), 2L, Id.of("Quay", "Officer"),
                9L), Map.of(Id.of("Quay", "Gun-Wagon"), 2L), Set.of());
        assertTrue(Pond.limit(line).list(LIST).situation(s -> s.withHoldings(Optional.of(shelf), kin())).so());
        assertEquals(List.of("1 note always.unknown: Test (The Pond Book) was not judged: the player's shelf is not known."),
                Pond.limit(line).list(LIST).said());
        Holdings unsure = new Holdings(shelf.owned(), shelf.painted(), Set.of(Id.of("Quay", "Carrier")));
        assertEquals(List.of("1 note always.unknown: Test (The Pond Book) was not judged: the player's shelf is not known."),
                Pond.limit(line).list(LIST).situation(s -> s.withHoldings(Optional.of(unsure), kin())).said());
    }

    @Test
    void theListBeforeIsHeldAgainstThisOne() {
        String before = "Squad; . 2 Crank; . 2 Bike of 2; . Tread of 3";
        String now = "Squad; . 3 Bike of 2; . 3 Tread of 3";
        // Both Cranks became Treads in the Late era, so nothing is gone; what is new is the third Bike.
        for (String line : List.of("count of units gone is 0", "count of units kept is 5", "count of units added is 1",
                "count of Eyes added is 1", "count of Crank kept is 2", "count of units in the list before is 5",
                "points of Tread in the list before is 24", "count of different units in the list before is 3")) {
            assertTrue(Pond.limit("always " + line).before(before).list(now).in("Late", 2).so(), line);
        }
        Pond early = Pond.limit("always count of units gone is at most 1").before(before).list("Squad; . 2 Tread of 3")
                .in("Late", 2);
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book): count of units gone is 3 and should be at most 1."),
                early.said());
        assertEquals(List.of(), Pond.limit("always count of units gone is at most 1").list(now).in("Late", 1).said(),
                "a first list has none before it");
    }

    @Test
    void whatIsNotKnownIsNotJudgedAndSaid() {
        assertEquals(List.of("1 note always.unknown: Test (The Pond Book) was not judged: the round is not known."),
                Pond.limit("always the round is 3").list(LIST).said());
        assertEquals(List.of("1 note always.unknown: Test (The Pond Book) was not judged: no limit of points is known."),
                Pond.limit("always points used is at most the limit").list(LIST).said());
        assertEquals(List.of("1 note always.unknown: Test (The Pond Book) was not judged: the era is not known."),
                Pond.limit("when the era is Late; always no").list(LIST).said());
        // What does not hang on it is judged all the same.
        assertTrue(Pond.limit("always the round is 3 or count of Tread is 4").list(LIST).so());
        assertFalse(Pond.limit("always the round is 3 and count of Tread is 5").list(LIST).so());
    }

    @Test
    void aConditionHoldsForEveryLineOfItsCard() {
        String lines = "when the round is at least 4; at most 1 of Tread; taking Tread needs 9 of Mast; always count of Eyes is 0";
        String some = lines.replace("taking Tread needs 9 of Mast; ", "");
        assertEquals(List.of(), Pond.limit(some).list(LIST).in("Late", 3).said());
        assertEquals(List.of("always.fails", "limit.at-most"), Pond.limit(some).list(LIST).in("Late", 4).verdict().findings()
                .stream().map(finding -> finding.code()).sorted().toList());
    }

    @Test
    void everyFormationThatLacksItIsToldOfAtItsPlace() {
        assertEquals(List.of(
                "2 breach always.fails: Test (The Pond Book): in 2 Squad count of Armour is 1 and should be at least 2.",
                "7 breach always.fails: Test (The Pond Book): in The last count of Armour is 0 and should be at least 2."),
                Pond.limit("always each Squad has count of Armour is at least 2")
                        .list("2 Squad; . Tread of 3; Squad; . 2 Tread of 3; . Bike of 2; Squad \"The last\"; . Bike of 2").said());
    }

    @Test
    void theAnswerOpensIntoItsParts() {
        Pond pond = Pond.limit("let Wheels be count of Armour; says \"Somebody must look.\";"
                + " always count of Eyes is at least Wheels divided by 4 rounded up").list("Squad; . 9 Tread of 3; . 2 Bike of 2");
        assertEquals(List.of("1 breach always.fails: Somebody must look. Test (The Pond Book): count of Eyes is 2 and should be at "
                + "least 3 (Wheels divided by 4 rounded up); Wheels is 9 (count of Armour)."), pond.said());
        assertEquals(List.of("Add Bicycle post of 1, 3 points."),
                pond.verdict().findings().get(0).mends().stream().map(mend -> mend.label()).toList());
    }

    @Test
    void nothingIsDividedByNothing() {
        assertEquals(List.of("1 caution always.fault: Test (The Pond Book) was not judged: something is divided by 0."),
                Pond.limit("always 10 divided by count of Crank is 1").list(LIST).said());
        assertEquals(List.of(), Pond.limit("when count of Crank is more than 0; always 10 divided by count of Crank is 1")
                .list(LIST).said());
    }

    @Test
    void numbersBeyondMeasureAreSaid() {
        assertEquals(List.of("1 caution always.fault: Test (The Pond Book) was not judged: a number is beyond all measure."),
                Pond.limit("let A be 999999999 times 999999999; always A is 1").list(LIST).said());
    }

    @Test
    void tooManyStepsAreSaid() {
        // A long sum, worked out anew for each of 3,000 bicycles.
        String sum = "count of units" + " plus its strength".repeat(100);
        assertEquals(List.of("1 caution always.fault: Test (The Pond Book) was not judged: it would take too many steps."),
                Pond.limit("let Long be sum per Bike of " + sum + "; let Longer be sum per Bike of Once plus Once plus 1;"
                        + "let Once be its strength" + " plus its strength".repeat(90) + "; always Long plus Longer is 1")
                        .list("Bike of 1; ".repeat(3_000)).said().stream().filter(said -> said.contains("always")).toList());
    }
}
