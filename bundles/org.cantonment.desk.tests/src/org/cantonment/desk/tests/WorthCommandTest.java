package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.assertWrong;
import static org.cantonment.desk.tests.ShoppingAnswers.boxes;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.left;
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

/** A bundle of four single boxes and a rule book, asked about on the command line; every sum was worked out by hand. */
class WorthCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("muster", folder);
    }

    @Test
    void theSamePiecesSingly() {
        JsonObject worth = json(folder, "worth", "W-60");
        assertEquals("60.00", text(worth, "price"));
        assertEquals("63.00", text(worth.getAsJsonObject("singles"), "total"));
        assertEquals("1 W-24, 1 W-3, 1 W-5", boxes(worth.getAsJsonObject("singles")));
        assertEquals("", left(worth.getAsJsonObject("singles")));
        assertEquals("3.00", text(worth, "saving"));
        assertEquals("11.00", text(worth, "savingWithExtras"));
        assertEquals("8.00", text(worth.getAsJsonArray("extras").get(0).getAsJsonObject(), "value"));
        assertFalse(worth.has("toPlayer"));
    }

    private void saves(String without, String with, String saving, String dearer, String... call) {
        JsonObject player = json(folder, call).getAsJsonObject("toPlayer");
        assertEquals(List.of(without, with, saving, dearer), List.of(text(player.getAsJsonObject("without"), "total"),
                text(player.getAsJsonObject("with"), "total"), text(player, "saving"), text(player, "dearer")));
    }

    @Test
    void whatItSavesEachPlayer() {
        saves("40.00", "40.00", "0.00", "20.00", "worth", "W-60", "--for", "Tessel");
        saves("54.00", "54.00", "0.00", "6.00", "worth", "W-60", "--for", "Nib");
        saves("62.00", "60.00", "2.00", "0.00", "worth", "W-60", "--for", "Nib", "--lists", "1", "--also", "Rule-Book");
        // Fenn wants what Nib wants, and owns the book.
        saves("54.00", "54.00", "0.00", "6.00", "worth", "W-60", "--for", "Fenn", "--lists", "1", "--also", "Rule-Book");
    }

    @Test
    void theThreeFiguresAreToldApart() {
        List<String> lines = Shell.in(folder, "worth", "Muster bundle", "--for", "P1").lines();
        for (String line : List.of(
                "Muster bundle costs 60.00 EUR, by prices of 2031-03-03 (the day on which the campaign begins).",
                "The same pieces singly: 63.00 EUR. Proven: nothing costs less.", "    1 Marsh company (W-24), 32.00 EUR",
                "  Left over: nothing.", "Against them it saves 3.00 EUR.",
                "Apart from the pieces: 1 Rule book, 8.00 EUR singly. Where that is wanted, too, it saves 11.00 EUR.",
                "To Tessel, for Tessel, round 1:", "  Without it: 40.00 EUR: 1 Marsh platoon 18.00 and 1 Cars 22.00.",
                "  To Tessel it saves nothing.",
                "  Made to buy it: 60.00 EUR: 1 Muster bundle 60.00, 20.00 EUR dearer.",
                "  If 1 Rule book is wanted, too: 48.00 EUR without it, still less.")) {
            assertTrue(lines.contains(line), line + " is not in " + lines);
        }
    }

    @Test
    void theReplyFitsAChat() {
        String reply = Shell.in(folder, "worth", "W-60", "--for", "Tessel", "--reply").out();
        assertTrue(reply.startsWith("Muster bundle costs 60.00 EUR, by prices of 2031-03-03 (the day on which the campaign"
                + " begins). Same pieces singly: 63.00, so it saves 3.00 EUR. To Tessel it saves nothing. Without it the lists"
                + " need only 40.00 of boxes. If 1 Rule book is wanted, too: 48.00 EUR without it, still less."), reply);
        assertTrue(reply.length() < 500, reply);
    }

    @Test
    void whatHasNoFigureIsNotGuessed() {
        assertSays("Harbour bundle is not on sale on 2031-03-03.", "worth", "W-61");
        assertSays("No price says what Bundle of one day costs.", "worth", "W-62");
        assertSays("No price says what Marsh platoon costs on 2030-12-31.", "worth", "W-12", "--on", "2030-12-31");
        assertSays("What Bundle from afar costs is in another currency, and no rate says on 2031-03-03 what that is in EUR.",
                "worth", "W-63");
        assertEquals(0, Shell.in(folder, "worth", "W-61", "--on", "2031-06-01").code());
        JsonObject none = json(folder, "worth", "W-61");
        assertFalse(none.has("price") || none.has("saving"));
    }

    private void assertSays(String line, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(1, shell.code(), shell.err());
        assertEquals(List.of(line), shell.lines());
    }

    /** 200.00 at 10.00 to 1 are 20.00: 2.00 dearer than a platoon. */
    @Test
    void aRateOfTheDayTurnsAPrice() {
        Folders.retype(folder.resolve("season.campaign"), "plays Muster-Book",
                "plays Muster-Book\nrate 1 EUR is 10.00 SEK from 2031-02-01");
        JsonObject worth = json(folder, "worth", "W-63");
        assertEquals("20.00", text(worth, "price"));
        assertEquals("-2.00", text(worth, "saving"));
        assertTrue(Shell.in(folder, "worth", "W-63").lines().contains("Against them it costs 2.00 EUR more."));
        assertEquals(1, Shell.in(folder, "worth", "W-63", "--on", "2031-01-31").code());
        assertEquals("SEK", text(json(folder, "worth", "W-63", "--in", "sek"), "currency"));
    }

    @Test
    void aSearchThatIsEndedClaimsNothing() {
        Shell shell = Shell.in(folder, "worth", "W-60", "--for", "Nib", "--seconds", "0");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().contains("The same pieces singly: nothing was found in time."), shell.out());
        assertTrue(shell.lines().contains("The search was ended before it was through."), shell.out());
        JsonObject worth = json(folder, "worth", "W-60", "--for", "Nib", "--seconds", "0");
        assertTrue(worth.get("stopped").getAsBoolean());
        assertFalse(worth.has("saving") || worth.has("toPlayer"));
    }

    @Test
    void severalCurrenciesAreNotMixed() {
        Folders.retype(folder.resolve("season.campaign"), " in EUR", "");
        assertWrong(folder, "Prices here are in EUR and SEK", "worth", "W-60");
        assertEquals(0, Shell.in(folder, "worth", "W-60", "--in", "EUR").code());
    }

    @Test
    void whatCannotBeAskedIsAWrongCallThatSaysWhy() {
        assertWrong(folder, "There is no box 'W-600' here. Did you mean 'W-60'?", "worth", "W-600");
        assertWrong(folder, "say with '--for' who", "worth", "W-60", "--lists", "1");
        assertWrong(folder, "two ways to answer", "worth", "W-60", "--json", "--reply");
        assertWrong(folder, "is no day", "worth", "W-60", "--on", "tomorrow");
        assertWrong(folder, "is no currency", "worth", "W-60", "--in", "pebbles");
        assertWrong(folder, "There is no piece, part or extra 'Rule-Bok' here. Did you mean 'Rule-Book'?", "worth", "W-60",
                "--for", "Nib", "--also", "Rule-Bok");
        assertWrong(folder, "a number from 1 to 10000 can be wanted", "worth", "W-60", "--for", "Nib", "--also", "0 Car");
        Folders.write(folder.resolve("more.range"), "range More in EUR\npiece Bell\nbox W-60 \"Bells\"\n  . Bell\n");
        assertWrong(folder, "'W-60' may be More/W-60 or Works/W-60; write one of these.", "worth", "W-60");
        assertEquals("Works/W-60", text(json(folder, "worth", "works/w-60"), "box"));
    }
}
