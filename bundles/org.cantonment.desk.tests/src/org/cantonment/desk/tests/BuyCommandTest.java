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

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** What to buy next, asked on the command line; every sum was worked out by hand. */
class BuyCommandTest {
    @TempDir
    private Path folder;

    private JsonObject plan(String... call) {
        return json(folder, call).getAsJsonObject("plan");
    }

    /** Four units want the same wagons: 9 are needed where 7 are, in kind; exactly there are 6 for 4 and 3 for 1. */
    @Test
    void theCheapestMendOfAShortage() {
        Folders.copy("shortage", folder);
        JsonObject kindred = plan("buy", "Ombra", "--lists", "1");
        assertEquals("9.00", text(kindred, "total"));
        assertEquals("1 Carts-3", boxes(kindred));
        assertTrue(kindred.get("proven").getAsBoolean());
        assertEquals("[17, 2]", List.of(objects(kindred, "turnouts").findFirst().orElseThrow().get("exact").getAsInt(),
                objects(kindred, "turnouts").findFirst().orElseThrow().get("kindred").getAsInt()).toString());
        JsonObject exact = plan("buy", "Ombra", "--lists", "ombra-2.list");
        assertEquals("20.50", text(exact, "total"));
        assertEquals("1 Carts-3, 1 Guns-2", boxes(exact));
    }

    @Test
    void theNextBestPlanHasOtherBoxes() {
        Folders.copy("shortage", folder);
        JsonObject answer = json(folder, "buy", "Ombra", "--lists", "1", "--next", "1", "--within", "1.00");
        assertEquals("10.00", text(objects(answer, "others").findFirst().orElseThrow(), "total"));
        assertEquals("2 Long-1", boxes(objects(answer, "others").findFirst().orElseThrow()));
        assertEquals(0, objects(json(folder, "buy", "Ombra", "--lists", "1", "--next", "1", "--within", "0.99"), "others")
                .count());
        assertTrue(Shell.in(folder, "buy", "Ombra", "--lists", "1", "--next", "1").lines()
                .contains("Next best: 10.00 EUR, 1.00 EUR more."));
    }

    @Test
    void aBoxThatNobodyNeedsSavesThePostage() {
        Folders.copy("postage", folder);
        JsonObject plan = plan("buy", "Quill");
        assertEquals("50.50", text(plan, "total"));
        assertEquals("1 Oar", left(plan));
        JsonObject order = objects(plan, "orders").findFirst().orElseThrow();
        assertEquals(List.of("50.50", "0.00"), List.of(text(order, "goods"), text(order, "postage")));
        Folders.retype(folder.resolve("works.range"), "free from 50.00", "free from 60.00");
        assertTrue(Shell.in(folder, "buy", "Quill").lines()
                .contains("  From The shop on the quay: 52.00 EUR (goods 46.00, postage 6.00)"));
    }

    /** "Marsh Box and Car Box, 22.00: rounds 1 and 2 done, and round 3 wants another 10.00. One frame crank, one gun." */
    @Test
    void underABudgetListsAreServedInTheirOrder() {
        Folders.copy("growing", folder);
        Shell shell = Shell.in(folder, "buy", "Ombra", "--budget", "25.00", "--reply");
        assertEquals(1, shell.code());
        assertEquals("1 Car box and 1 Marsh box, 22.00 EUR: Ombra, round 1 and Ombra, round 2 done. Ombra, round 3 wants"
                + " another 10.00. Build 1 Car frame as 1 Crank car, glued; 1 Car frame as 1 Gun car, glued. Left over:"
                + " nothing.", shell.out().strip());
        JsonObject answer = json(folder, "buy", "Ombra", "--budget", "25");
        assertEquals("1 Car-Box, 1 Marsh-Box", boxes(answer.getAsJsonObject("plan")));
        assertEquals("1 Crank, 1 Gun", builds(answer.getAsJsonObject("plan")));
        assertEquals("32.00", text(objects(answer, "beyond").findFirst().orElseThrow(), "together"));
        assertEquals("10.00", text(answer, "further"));
        assertEquals("32.00", text(plan("buy", "Ombra"), "total"));
        // The last list first: then nothing else is left over for.
        assertEquals(1, objects(json(folder, "buy", "Ombra", "--lists", "3,1", "--budget", "31.99"), "beyond").count());
    }

    /** Losses stand on the roll; the piece is in the case. */
    @Test
    void lossesOfTheRollMakeNobodyBuy() {
        Folders.copy("growing", folder);
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\n20 Foot\nCrank\nGun\n");
        Folders.retype(folder.resolve("season.campaign"), "round 1\n", "week 1\n  . P1 lost Crank\nround 1\n");
        Shell shell = Shell.in(folder, "buy", "Ombra");
        assertEquals(0, shell.code());
        assertTrue(shell.lines().contains("Nothing need be bought: everything for Ombra, round 1, Ombra, round 2 and Ombra,"
                + " round 3 is there."), shell.out());
        assertEquals("0.00", text(plan("buy", "Ombra"), "total"));
    }

    /** What was bought and built since the shelf was written down counts. */
    @Test
    void theWeeksCount() {
        Folders.copy("growing", folder);
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\n10 Foot\n");
        assertEquals("22.00", text(plan("buy", "Ombra"), "total"));
        Folders.retype(folder.resolve("season.campaign"), "round 1\n", "week 1\n  . P1 bought Car-Box for 12.00\nround 1\n");
        assertEquals("10.00", text(plan("buy", "Ombra"), "total"));
    }

    @Test
    void onlyFromThoseWhoWereNamed() {
        Folders.copy("postage", folder);
        Folders.write(folder.resolve("more.range"), "range More in EUR\nseller Barrow \"The barrow\" in EUR\n"
                + "  . offers 1 Wagons for 99.00 each\n");
        assertEquals("99.00", text(plan("buy", "Quill", "--from", "Barrow"), "total"));
        assertEquals("50.50", text(plan("buy", "Quill", "--from", "Barrow,Quay-Shop"), "total"));
        assertEquals("50.50", text(plan("buy", "Quill", "--from", "The works"), "total"));
        assertWrong(folder, "There is no maker or seller 'Barow' here. Did you mean 'Barrow'?", "buy", "Quill", "--from",
                "Barow");
    }

    @Test
    void aSearchThatIsEndedSaysTheBestAndTheBound() {
        Folders.copy("growing", folder);
        Shell shell = Shell.in(folder, "buy", "Ombra", "--seconds", "0");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().stream().anyMatch(line -> line.startsWith("Stopped before a plan was found; nothing costs"
                + " less than ")), shell.out());
        JsonObject answer = json(folder, "buy", "Ombra", "--seconds", "0");
        assertTrue(answer.get("stopped").getAsBoolean());
        assertFalse(answer.get("impossible").getAsBoolean());
        JsonObject budget = json(folder, "buy", "Ombra", "--seconds", "0", "--budget", "30");
        assertEquals(3, objects(budget, "beyond").count());
        assertTrue(Shell.in(folder, "buy", "Ombra", "--seconds", "0", "--budget", "30").lines()
                .contains("Ombra, round 3: was not reached in time."));
    }

    /** Ombra's first round wants ten foot and a crank car, Brack's the same with a gun car: one box of two cars serves both. */
    @Test
    void twoOrderTogetherAndShareABox() {
        Folders.copy("growing", folder);
        Folders.write(folder.resolve("lists/brack-1.list"), "list by P2 round 1\nColumn\n  . Ten-Marsh\n  . Gun-Car\n");
        assertEquals("17.00", text(plan("buy", "Ombra", "--lists", "1"), "total"));
        assertEquals("17.00", text(plan("buy", "Brack", "--lists", "1"), "total"));
        JsonObject answer = json(folder, "buy", "Ombra", "--together", "Brack", "--lists", "1");
        assertEquals("32.00", text(answer.getAsJsonObject("plan"), "total"));
        assertEquals("1 Car-Box, 2 Marsh-Box", boxes(answer.getAsJsonObject("plan")));
        assertEquals("[\"Brack\"]", answer.getAsJsonArray("together").toString());
        Shell shell = Shell.in(folder, "buy", "Ombra", "--together", "Brack", "--lists", "1");
        assertTrue(shell.lines().contains("  1 Car frame as 1 Gun car, glued, for Brack."), shell.out());
        assertTrue(shell.lines().contains("  1 Car frame as 1 Crank car, glued, for Ombra."), shell.out());
        assertWrong(folder, "'Ombra' is named twice.", "buy", "Ombra", "--together", "Ombra", "--lists", "1");
        assertWrong(folder, "'--also' is asked for one player", "buy", "Ombra", "--together", "Brack", "--lists", "1", "--also",
                "2 Gun");
    }
}
