package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.assertWrong;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.objects;
import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Shelves, prices and wishes that make no sense, or for which there is no plan. */
class BuyTroubleTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("growing", folder);
    }

    private void assertNone(String... sentences) {
        Shell shell = Shell.in(folder, "buy", "Ombra", "--lists", "1");
        assertEquals(1, shell.code(), shell.out() + shell.err());
        for (String sentence : sentences) {
            assertTrue(shell.lines().contains(sentence), sentence + " is not in " + shell.out());
        }
        JsonObject answer = json(folder, "buy", "Ombra", "--lists", "1");
        assertTrue(answer.get("impossible").getAsBoolean());
        assertFalse(answer.has("plan"));
    }

    @Test
    void aNeedThatNobodySellsIsNamed() {
        Folders.retype(folder.resolve("growing.rules"), "needs Crank\n", "needs Sledge\n");
        Folders.write(folder.resolve("more.range"), "range More in EUR\npiece Sledge \"Sledge\"\n");
        assertNone("There is no plan.", "Ombra, round 1 needs 1 of Sledge; nobody sells it or anything that may stand for it,"
                + " and none is there.");
        JsonObject budget = json(folder, "buy", "Ombra", "--budget", "50");
        assertEquals("buying.nobody-sells", text(objects(objects(budget, "beyond").findFirst().orElseThrow(), "why")
                .findFirst().orElseThrow(), "code"));
        assertTrue(Shell.in(folder, "buy", "Ombra", "--budget", "50").lines().contains("Ombra, round 1: cannot be had,"
                + " whatever it costs. Ombra, round 1 needs 1 of Sledge; nobody sells it or anything that may stand for it,"
                + " and none is there."));
    }

    @Test
    void noPriceForAnythingThatFits() {
        Folders.retype(folder.resolve("works.range"), "  . price 12.00\n", "");
        Folders.retype(folder.resolve("works.range"), "  . price 17.00\n", "");
        assertNone("There is no plan.", "Ombra, round 1 needs 1 of Crank car; what holds it is not on sale on that day, or no"
                + " price says what it costs in EUR: Car box, Starter.");
        Folders.retype(folder.resolve("works.range"), "  . price 10.00\n", "");
        Folders.retype(folder.resolve("season.campaign"), " in EUR", "");
        assertWrong(folder, "No box here has a price", "worth", "Starter");
    }

    @Test
    void aBudgetOfNothingIsEnoughForNothingOnly() {
        Shell shell = Shell.in(folder, "buy", "Ombra", "--budget", "0");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("Ombra, round 1: is beyond the budget; it would cost 17.00 EUR, 17.00 EUR too"
                + " much."), shell.out());
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\n20 Foot\nCrank\nGun\n");
        assertEquals(0, Shell.in(folder, "buy", "Ombra", "--budget", "0").code());
    }

    @Test
    void whatCostsNothingIsBoughtForNothing() {
        for (String price : new String[] { "10.00", "12.00", "17.00" }) {
            Folders.retype(folder.resolve("works.range"), "price " + price, "price 0.00");
        }
        JsonObject answer = json(folder, "buy", "Ombra", "--budget", "0");
        assertEquals("0.00", text(answer.getAsJsonObject("plan"), "total"));
        assertEquals(3, objects(answer.getAsJsonObject("plan"), "turnouts").count());
        assertEquals(0, objects(answer, "beyond").count());
    }

    @Test
    void aShelfThatClaimsWhatItsPartsCannotGiveIsCountedAsFarAsItCanBeTrue() {
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\nCar-Box\n  . built 3 Crank, Gun\n");
        Shell shell = Shell.in(folder, "buy", "Ombra", "--lists", "1");
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.lines().contains("Buy for 10.00 EUR. Proven: nothing costs less."), shell.out());
        assertFalse(json(folder, "buy", "Ombra", "--lists", "1").getAsJsonArray("remarks").isEmpty(), shell.out());
    }

    @Test
    void aThousandListsAreOneQuestion() {
        for (int i = 4; i < 1004; i++) {
            Folders.write(folder.resolve("lists/dream-" + i + ".list"), "list Dream-" + i + " under Growing-Book to 80 points\n"
                    + "Column\n  . " + (i % 2 + 1) + " Ten-Marsh\n  . " + (i % 3 == 0 ? "Gun-Car" : "Crank-Car") + "\n");
        }
        String[] lists = new String[1000];
        for (int i = 0; i < lists.length; i++) {
            lists[i] = "Dream-" + (i + 4);
        }
        JsonObject answer = json(folder, "buy", "Ombra", "--lists", String.join(",", lists));
        assertEquals("32.00", text(answer.getAsJsonObject("plan"), "total"));
        assertEquals(1000, objects(answer.getAsJsonObject("plan"), "turnouts").count());
    }

    @Test
    void whatCannotBeAskedIsAWrongCallThatSaysWhy() {
        assertWrong(folder, "There is no player 'Ombre' here. Did you mean 'Ombra'?", "buy", "Ombre");
        assertWrong(folder, "Ombra has no list for round 4; there are lists for rounds 1, 2, 3.", "buy", "Ombra", "--lists",
                "2-4");
        assertWrong(folder, "is no span of rounds", "buy", "Ombra", "--lists", "3-1");
        assertWrong(folder, "There is no list 'ombra-4' here. Did you mean 'ombra-1.list'?", "buy", "Ombra", "--lists",
                "ombra-4");
        assertWrong(folder, "'ombra-1' is no list of Brack's", "buy", "Brack", "--lists", "ombra-1");
        assertWrong(folder, "Brack has no list that is still to be played after 2031-03-03", "buy", "Brack");
        assertWrong(folder, "is no amount of money", "buy", "Ombra", "--budget", "much");
        assertWrong(folder, "is no amount of money", "buy", "Ombra", "--budget", "1.234");
        assertWrong(folder, "is no amount of money", "buy", "Ombra", "--budget", "-3");
        assertWrong(folder, "in another currency than EUR", "buy", "Ombra", "--budget", "3 SEK");
        assertWrong(folder, "tells at most 9", "buy", "Ombra", "--next", "10");
    }
}
