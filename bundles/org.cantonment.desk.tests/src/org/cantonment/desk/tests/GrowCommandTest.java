package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.assertWrong;
import static org.cantonment.desk.tests.ShoppingAnswers.boxes;
import static org.cantonment.desk.tests.ShoppingAnswers.builds;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.left;
import static org.cantonment.desk.tests.ShoppingAnswers.objects;
import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Three rounds of a growing army, asked about on the command line; every sum was worked out by hand. */
class GrowCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("growing", folder);
    }

    private static String byStage(JsonObject plan) {
        return String.join(", ", objects(plan, "orders").map(order -> order.get("stage") + ": " + text(order, "total"))
                .toList());
    }

    @Test
    void looksAheadOfTheCheapestFirstStep() {
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1-3");
        JsonObject plan = answer.getAsJsonObject("plan");
        assertEquals("32.00", text(plan, "total"));
        assertEquals("1: 22.00, 3: 10.00", byStage(plan));
        assertEquals("1 Car-Box, 1 Marsh-Box, 1 Marsh-Box", boxes(plan));
        assertEquals("", left(plan));
        assertEquals("1 Crank, 1 Gun", builds(plan));
        assertEquals("34.00", text(answer, "stepwise"));
        assertFalse(answer.has("advice"));
        assertEquals(List.of("35", "57", "77"), objects(answer, "rounds").map(one -> one.get("points").toString()).toList());
        assertEquals(List.of("40", "60", "80"), objects(answer, "rounds").map(one -> one.get("limit").toString()).toList());
    }

    @Test
    void savesUpForTheNextRound() {
        JsonObject answer = json(folder, "grow", "Ombra", "--budgets", "20,10,15", "--saved");
        JsonObject plan = answer.getAsJsonObject("plan");
        assertEquals("39.00", text(plan, "total"));
        assertEquals("1 Starter, 1 Car-Box, 1 Marsh-Box", boxes(plan));
        assertEquals("1 Car-Frame", left(plan));
        assertEquals(List.of("3.00", "1.00", "6.00"), objects(answer, "rounds").map(one -> text(one, "inHand")).toList());
        assertEquals(List.of("20.00", "13.00", "16.00"),
                objects(answer, "rounds").map(one -> text(one, "available")).toList());
        assertEquals("7.00", text(answer.getAsJsonObject("advice"), "saves"));
        // 5.00 more in the first round saves 7.00; 2.00 more do, too, and less does not.
        assertEquals("2.00", text(answer.getAsJsonObject("advice"), "more"));
        assertEquals("32.00", text(json(folder, "grow", "Ombra", "--budgets", "25,10,15", "--saved").getAsJsonObject("plan"),
                "total"));
        assertEquals("39.00", text(json(folder, "grow", "Ombra", "--budgets", "21.99,10,15", "--saved")
                .getAsJsonObject("plan"), "total"));
    }

    @Test
    void saysTheFirstRoundThatIsShort() {
        Shell shell = Shell.in(folder, "grow", "Ombra", "--budgets", "20,10,15");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("No plan: round 2 is short 2.00 EUR (12.00 is needed, 10.00 is there at the most)."),
                shell.out());
        JsonObject answer = json(folder, "grow", "Ombra", "--budgets", "20,10,15");
        assertTrue(answer.get("impossible").getAsBoolean());
        assertEquals("2.00", text(answer.getAsJsonObject("shortfall"), "missing"));
        assertEquals(2, answer.getAsJsonObject("shortfall").get("round").getAsInt());
    }

    @Test
    void theReplyFitsAChat() {
        assertEquals("In all 32.00 EUR. Round 1: 1 Car box and 1 Marsh box, 22.00. Round 2: nothing. Round 3: 1 Marsh box,"
                + " 10.00. Build 1 Car frame as 1 Crank car, glued; 1 Car frame as 1 Gun car, glued. Left over: nothing. What"
                + " is cheapest for round 1 alone leads to 34.00 EUR at best.",
                Shell.in(folder, "grow", "Ombra", "--reply").out().strip());
    }

    @Test
    void aRoundWithoutAListGetsOneThatIsLegal() {
        JsonObject answer = json(folder, "grow", "Brack", "--least", "0");
        JsonObject last = objects(answer, "rounds").skip(2).findFirst().orElseThrow();
        assertTrue(last.get("composed").getAsBoolean());
        assertTrue(last.getAsJsonArray("breaches").isEmpty());
        assertEquals("17.00", text(answer.getAsJsonObject("plan"), "total"));
        assertEquals("Column (Ten marsh, Crank car)", text(last, "list"));
        // Half of 80 are 40: the crank alone is too little, a gun beside it is 57.
        JsonObject half = objects(json(folder, "grow", "Brack"), "rounds").skip(2).findFirst().orElseThrow();
        assertTrue(half.get("points").getAsInt() >= 40 && half.get("points").getAsInt() <= 80, half.toString());
        assertWrong(folder, "is a percentage of the limit", "grow", "Brack", "--least", "101");
        Folders.retype(folder.resolve("season.campaign"), "limit 80", "limit 19");
        Shell none = Shell.in(folder, "grow", "Brack");
        assertEquals(1, none.code());
        assertTrue(none.lines().contains("No legal list was found for round 3 that uses enough of its 19 points, so there is no plan."),
                none.out());
    }

    @Test
    void wishesSayTheMoneyWhereTheCampaignDoesNot() {
        for (String budget : List.of("25.00", "10.00", "15.00")) {
            Folders.retype(folder.resolve("season.campaign"), "  . budget " + budget + "\n", "");
        }
        assertTrue(Shell.in(folder, "grow", "Ombra").lines().get(0).endsWith("; no end of money."));
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\nwish Spring\n"
                + "  . budget 20.00 per round saved\n");
        JsonObject answer = json(folder, "grow", "Ombra");
        assertTrue(answer.get("saved").getAsBoolean());
        assertEquals(List.of("20.00", "20.00", "20.00"), objects(answer, "rounds").map(one -> text(one, "budget")).toList());
        Folders.retype(folder.resolve("ombra.shelf"), "20.00 per round saved", "50.00");
        assertEquals(List.of("50.00", "28.00", "28.00"), objects(json(folder, "grow", "Ombra"), "rounds")
                .map(one -> text(one, "available")).toList());
    }

    @Test
    void aWrittenListThatIsNotLegalIsNoPlan() {
        Folders.retype(folder.resolve("season.campaign"), "limit 60", "limit 50");
        Shell shell = Shell.in(folder, "grow", "Ombra");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("  Not legal: The list uses 57 points of 50: 7 too many."), shell.out());
    }

    @Test
    void hoursAtTheBenchAreCountedInParts() {
        assertEquals(1, Shell.in(folder, "grow", "Ombra", "--bench", "0").code());
        assertEquals(0, Shell.in(folder, "grow", "Ombra", "--bench", "1").code());
    }

    @Test
    void whatCannotBeAskedIsAWrongCallThatSaysWhy() {
        assertWrong(folder, "There is no round 4 in this campaign.", "grow", "Ombra", "--rounds", "4");
        assertWrong(folder, "'soon' is no round", "grow", "Ombra", "--rounds", "soon");
        assertWrong(folder, "There are 2 budgets for 3 rounds", "grow", "Ombra", "--budgets", "1,2");
        assertWrong(folder, "'--saved' is said of '--budgets'", "grow", "Ombra", "--saved");
        Folders.retype(folder.resolve("season.campaign"), "  . limit 80 points\n", "");
        assertWrong(folder, "the round has no limit of points", "grow", "Brack");
    }
}
