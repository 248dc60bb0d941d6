package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.assertWrong;
import static org.cantonment.desk.tests.ShoppingAnswers.boxes;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.objects;
import static org.junit.jupiter.api.Assertions.assertEquals;
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

/** Two rounds and frames that take an hour and a half each, with an end of time; every sum was worked out by hand. */
class GrowBenchTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("benched", folder);
    }

    private void wish(String bench) {
        Folders.write(folder.resolve("nib.shelf"), "shelf of P1 in EUR on 2031-03-01\nwish Quiet-Evenings\n" + bench);
    }

    private static List<String> rounds(Shell shell) {
        return shell.lines().stream().filter(line -> line.startsWith("Round ")).toList();
    }

    /** Three hours are two frames, and round 2 wants three more than round 1: so one of them is bought and built before it. */
    @Test
    void aFrameIsBuiltARoundEarlier() {
        assertEquals(List.of("Round 1: 15 of 20 points; 7.00 EUR spent; 1 hour 30 minutes at the bench",
                "Round 2: 69 of 80 points; 21.00 EUR spent; 4 hours 30 minutes at the bench"), rounds(Shell.in(folder, "grow", "Nib")));
        wish("  . bench 3 hours per round\n");
        Shell shell = Shell.in(folder, "grow", "Nib");
        assertEquals(0, shell.code());
        assertTrue(shell.lines().get(0).endsWith("; no end of money; at the bench 3 hours per round, as the player wishes."),
                shell.out());
        assertEquals(List.of("Round 1: 15 of 20 points; 14.00 EUR spent; 3 hours of 3 hours at the bench",
                "Round 2: 69 of 80 points; 14.00 EUR spent; 3 hours of 3 hours at the bench"), rounds(shell));
        JsonObject answer = json(folder, "grow", "Nib");
        assertEquals("2 Single, 2 Single", boxes(answer.getAsJsonObject("plan")));
        assertEquals(List.of("{\"stage\":1,\"minutes\":180,\"parts\":2}", "{\"stage\":2,\"minutes\":180,\"parts\":2}"),
                objects(answer.getAsJsonObject("plan"), "work").map(JsonObject::toString).toList());
        assertEquals(List.of("{\"minutes\":180}", "{\"minutes\":180}"),
                objects(answer, "rounds").map(one -> one.get("bench").toString()).toList());
    }

    /** 2 hours 55 minutes are one frame whole; so three of four are left for round 2, which take 4 hours 30 minutes. */
    @Test
    void theShortageIsToldInMinutes() {
        Shell shell = Shell.in(folder, "grow", "Nib", "--bench", "175 minutes");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("Round 2: 69 of 80 points; left out"), shell.out());
        assertTrue(shell.lines().contains("  Nib, round 2 is 1 hour 35 minutes short at the bench; it has 2 hours 55 minutes, beside"
                + " what is left of the rounds before."), shell.out());
        JsonObject answer = json(folder, "grow", "Nib", "--bench", "89 minutes", "--rounds", "1");
        assertTrue(objects(answer, "rounds").findFirst().orElseThrow().getAsJsonArray("leftOut").toString().contains(
                "Nib, round 1 is 1 minute short at the bench; it has 1 hour 29 minutes."), answer.toString());
        assertTrue(Shell.in(folder, "grow", "Nib", "--bench", "175 minutes", "--reply").out().length() < 500);
    }

    @Test
    void partsCanBeCountedInstead() {
        Shell shell = Shell.in(folder, "grow", "Nib", "--bench", "2 parts");
        assertEquals(List.of("Round 1: 15 of 20 points; 14.00 EUR spent; 2 of 2 parts built",
                "Round 2: 69 of 80 points; 14.00 EUR spent; 2 of 2 parts built"), rounds(shell));
        assertEquals(1, Shell.in(folder, "grow", "Nib", "--bench", "1 part").code());
        assertEquals(1, Shell.in(folder, "grow", "Nib", "--bench", "0 hours").code());
    }

    /** From the day of the prices to round 1 are 9 days, from the end of round 1 to round 2 are 12: 231 and 308 minutes. */
    @Test
    void hoursPerWeekGoByTheDaysBetween() {
        wish("  . bench 3 hours per week\n");
        JsonObject answer = json(folder, "grow", "Nib", "--on", "2031-03-01");
        assertEquals(List.of("{\"minutes\":231}", "{\"minutes\":308}"),
                objects(answer, "rounds").map(one -> one.get("bench").toString()).toList());
        Folders.retype(folder.resolve("season.campaign"), "  . play from 2031-03-25 to 2031-03-27\n", "");
        JsonObject undated = json(folder, "grow", "Nib", "--on", "2031-03-01");
        assertEquals(List.of(true, false), objects(undated, "rounds").map(one -> one.has("bench")).toList());
        assertTrue(undated.getAsJsonArray("remarks").toString().contains("Without dates of play nobody can tell how many weeks there"
                + " are before round 2; no end of time at the bench is reckoned with there."), undated.toString());
    }

    @Test
    void whatIsAskedOverrulesTheWish() {
        wish("  . bench 1 hour per round\n");
        assertEquals(1, Shell.in(folder, "grow", "Nib").code());
        Shell shell = Shell.in(folder, "grow", "Nib", "--bench", "6 hours per round");
        assertEquals(0, shell.code());
        assertTrue(shell.lines().get(0).endsWith("; at the bench 6 hours per round, as asked."), shell.out());
    }

    @Test
    void aWishHoldsInItsRounds() {
        wish("  . bench 90 minutes per round\n  . rounds 1\nwish Holidays\n  . bench 5 hours per round\n  . rounds 2 to 9\n");
        assertEquals(List.of("{\"minutes\":90}", "{\"minutes\":300}"),
                objects(json(folder, "grow", "Nib"), "rounds").map(one -> one.get("bench").toString()).toList());
    }

    /** The gun takes its own two hours; of the three cranks nobody says how long they take. */
    @Test
    void partsThatDoNotSayCountAsNoTimeAndThatIsSaidOnce() {
        Folders.retype(folder.resolve("works.range"), "  . builds Gun\n", "  . builds Gun takes 2 hours\n");
        Folders.retype(folder.resolve("works.range"), "  . takes 90 minutes\n", "");
        Shell shell = Shell.in(folder, "grow", "Nib", "--bench", "6 hours");
        assertEquals(List.of("Round 1: 15 of 20 points; 7.00 EUR spent; 0 minutes of 6 hours at the bench",
                "Round 2: 69 of 80 points; 21.00 EUR spent; 2 hours of 6 hours at the bench"), rounds(shell));
        String untimed = "No range says how long it takes to build Frame; that counts as no time.";
        assertEquals(1, shell.lines().stream().filter(untimed::equals).count(), shell.out());
        assertEquals(3, objects(json(folder, "grow", "Nib").getAsJsonObject("plan"), "untimed").findFirst().orElseThrow()
                .get("count").getAsInt());
        Folders.retype(folder.resolve("works.range"), " takes 2 hours", "");
        assertEquals(List.of(), Shell.in(folder, "grow", "Nib").lines().stream().filter(untimed::equals).toList());
    }

    @Test
    void buySaysHowLongTheBuildsTake() {
        Shell shell = Shell.in(folder, "buy", "Nib");
        assertTrue(shell.lines().contains("At the bench: 6 hours."), shell.out());
        assertTrue(Shell.in(folder, "buy", "Nib", "--reply").out().contains(" At the bench: 6 hours. "));
        assertEquals(360, objects(json(folder, "buy", "Nib").getAsJsonObject("plan"), "work").findFirst().orElseThrow()
                .get("minutes").getAsInt());
        Folders.retype(folder.resolve("works.range"), "  . takes 90 minutes\n", "");
        assertTrue(Shell.in(folder, "buy", "Nib").lines().stream().noneMatch(line -> line.contains("bench")));
    }

    @Test
    void whatIsNoTimeAtTheBenchIsAWrongCall() {
        for (String text : List.of("6", "hours", "6 days", "-1 hours", "1.5 hours", "10001 minutes", "6 hours per game", "999999999999 parts")) {
            assertWrong(folder, "'" + text + "' says no time at the bench; write it like '6 hours', '90 minutes' or '4 parts'", "grow",
                    "Nib", "--bench=" + text);
        }
    }

    @Test
    void theWindowShowsTheSame() throws Unclear {
        wish("  . bench 3 hours per round\n");
        Counter.Wish wish = new Counter.Wish(Errand.of(List.of(), Optional.empty()), "", 0, Optional.empty(), true);
        Meanings meanings = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot().meanings();
        Counter.Look look = Counter.of(meanings, meanings.campaigns().get(0).players().get(0), wish, list -> "",
                CancelToken.NEVER, Progress.SILENT);
        assertTrue(look.rows().stream().flatMap(row -> row.parts().stream()).map(Row::cells).anyMatch(List.of("Work", "",
                "3 hours of 3 hours at the bench")::equals), look.rows().toString());
    }
}
