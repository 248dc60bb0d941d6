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
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Counter;
import org.cantonment.desk.shopping.Errand;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.desk.turnout.Row;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
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
        Shell none = Shell.in(folder, "grow", "Brack", "--rounds", "3");
        assertEquals(1, none.code());
        assertTrue(none.lines().contains("No legal list was found for round 3 that uses enough of its 19 points: no formation fits"
                + " into them with what it must have, by the rules and the wishes."), none.out());
        assertTrue(none.lines().contains("So there is no plan."), none.out());
    }

    @Test
    void goesOnWithoutARoundThatCannotBeHad() {
        Folders.retype(folder.resolve("works.range"), "box Marsh-Box", "piece Ram \"Ram\"\nbox Ram-Box \"Ram box\"\n  . Ram\n"
                + "  . price 9.00 from 2031-05-01\nbox Marsh-Box");
        Folders.retype(folder.resolve("growing.rules"), "formation Column", "unit Ram \"Ram\"\n  . needs Ram\n  . strength 1 for 1"
                + " points\nsupport Rams 0 to 1 of Ram\nformation Column");
        Folders.write(folder.resolve("lists/ombra-3.list"), "list by P1 round 3\nColumn\n  . 2 Ten-Marsh\n  . Crank-Car\nsupport\n"
                + "  . Ram\n");
        Shell shell = Shell.in(folder, "grow", "Ombra");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("Round 3: 56 of 80 points; left out"), shell.out());
        assertTrue(shell.lines().contains("  Ram box (Ram-Box) is sold from 2031-05-01."), shell.out());
        JsonObject answer = json(folder, "grow", "Ombra");
        assertEquals("22.00", text(answer.getAsJsonObject("plan"), "total"));
        assertEquals(2, objects(answer, "rounds").skip(2).findFirst().orElseThrow().getAsJsonArray("leftOut").size());
    }

    /** "First foot before a second of the cars" and "a car early": said of each round, and followed by what is composed. */
    @Test
    void adviceOfTheClubIsACautionOfThePlan() {
        Folders.write(folder.resolve("advice.rules"), "rules Advice \"Advice of the club\" over Growing-Book\n"
                + "limit Guns-Early \"A gun early\" caution\n  . at least 1 of Gun-Car in rounds 1 to 2\n"
                + "limit Foot-First \"Foot before two cars\" caution\n  . first 2 Ten-Marsh before 2 Crank-Car, Gun-Car\n"
                + "limit Slowly \"Slowly\" caution\n  . keep the list before, change at most 0 units\n");
        Folders.retype(folder.resolve("season.campaign"), "plays Growing-Book", "plays Growing-Book, Advice");
        Folders.write(folder.resolve("lists/ombra-3.list"), "list by P1 round 3\nColumn\n  . 2 Ten-Marsh\n  . Crank-Car\n");
        Shell shell = Shell.in(folder, "grow", "Ombra");
        assertEquals(0, shell.code());
        List<String> cautions = shell.lines().stream().filter(line -> line.startsWith("  Caution: "))
                .map(line -> line.substring(11).replaceAll(":.*", "")).toList();
        assertEquals(List.of("A gun early (Advice of the club)", "Slowly (Advice of the club)"), cautions);
        // Brack's second round is composed: with the gun that is advised, though the crank is cheaper in points.
        JsonObject brack = objects(json(folder, "grow", "Brack", "--rounds", "2", "--compose", "--budgets", "40"), "rounds").findFirst().orElseThrow();
        assertTrue(brack.getAsJsonArray("cautions").isEmpty() && text(brack, "list").contains("Gun car"), brack.toString());
    }

    @Test
    void wishesThatCannotBeAreSaid() {
        Folders.write(folder.resolve("brack.shelf"), "shelf of P2 in EUR on 2031-03-01\nwish Odd\n  . likes Gun-Car, Crank-Car\n"
                + "  . never Gun-Car\n");
        Shell shell = Shell.in(folder, "grow", "Brack", "--compose", "--rounds", "3", "--budgets", "40");
        assertEquals(0, shell.code());
        assertTrue(shell.lines().contains("Gun car is wished for and never wanted; 'never' holds (round 3)."), shell.out());
        assertFalse(shell.lines().stream().anyMatch(line -> line.startsWith("  Composed") && line.contains("Gun car")), shell.out());
        Folders.retype(folder.resolve("growing.rules"), "unit Gun-Car", "era Old \"The old days\"\nera New \"The new days\" after Old\n"
                + "unit Gun-Car");
        Folders.retype(folder.resolve("growing.rules"), "  . strength 1 for 22 points", "  . strength 1 for 22 points\n  . available"
                + " from New");
        Folders.retype(folder.resolve("season.campaign"), "  . limit 80 points", "  . limit 80 points\n  . era Old");
        Folders.retype(folder.resolve("brack.shelf"), "  . never Gun-Car\n", "");
        Shell old = Shell.in(folder, "grow", "Brack", "--compose", "--rounds", "3", "--budgets", "40");
        assertTrue(old.lines().stream().anyMatch(line -> line.startsWith("Gun car, which is wished for, ")
                && line.contains("The new days") && line.endsWith("(round 3).")), old.out());
    }

    /** What a window shows: a row for each round that opens into its boxes and builds. */
    @Test
    void theSameAsRowsThatOpen() throws Unclear {
        Meanings meanings = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot().meanings();
        Counter.Wish wish = new Counter.Wish(Errand.of(List.of(), Optional.empty()), "", 0, Optional.empty(), true);
        List<Row> rows = Counter.of(meanings, meanings.campaigns().get(0).players().get(0), wish, list -> "", CancelToken.NEVER,
                Progress.SILENT).rows();
        assertEquals(List.of("Growth plan", "Round 1: 35 of 40 points", "Round 2: 57 of 60 points", "Round 3: 77 of 80 points",
                "Left over", "Looking ahead", "To know"), rows.stream().map(row -> row.cells().get(0)).toList());
        assertEquals(List.of("32.00 EUR", "22.00 EUR", "0.00 EUR", "10.00 EUR", "", "", ""), rows.stream()
                .map(row -> row.cells().get(1)).toList());
        assertTrue(rows.get(1).parts().stream().anyMatch(row -> row.cells().get(2).contains("Crank car, glued")));
    }

    /** What is liked is dropped where it does not fit the money: the gun car wants a box of two frames, beside the starter. */
    @Test
    void whatIsLikedGivesWayToTheMoney() {
        Folders.write(folder.resolve("brack.shelf"), "shelf of P2 in EUR on 2031-03-01\nwish Both\n  . likes Gun-Car, Crank-Car\n");
        JsonObject rich = json(folder, "grow", "Brack", "--compose", "--rounds", "3", "--budgets", "22");
        assertEquals("22.00", text(rich.getAsJsonObject("plan"), "total"));
        JsonObject poor = json(folder, "grow", "Brack", "--compose", "--rounds", "3", "--budgets", "17", "--least", "30");
        assertEquals("17.00", text(poor.getAsJsonObject("plan"), "total"));
        assertTrue(poor.getAsJsonArray("remarks").toString().contains("so it is left aside"), poor.toString());
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
    void whatCannotBeAskedIsAWrongCallThatSaysWhy() {
        assertWrong(folder, "There is no round 4 in this campaign.", "grow", "Ombra", "--rounds", "4");
        assertWrong(folder, "'soon' is no round", "grow", "Ombra", "--rounds", "soon");
        assertWrong(folder, "There are 2 budgets for 3 rounds", "grow", "Ombra", "--budgets", "1,2");
        assertWrong(folder, "'--saved' is said of '--budgets'", "grow", "Ombra", "--saved");
        Folders.retype(folder.resolve("season.campaign"), "  . limit 80 points\n", "");
        assertWrong(folder, "the round has no limit of points", "grow", "Brack");
    }
}
