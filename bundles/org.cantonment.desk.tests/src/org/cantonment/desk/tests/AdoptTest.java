package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Before adopting: invented rules for a winter and a weekend over a published book; every sum was worked out by hand. */
class AdoptTest {
    @TempDir
    Path here;
    private Path war;

    @BeforeEach
    void theWarWithoutItsHouseRules() throws IOException {
        war = here.resolve("war");
        Folders.copy("house-rules", war);
        Files.move(war.resolve("winter.rules"), here.resolve("winter.rules"));
        Files.move(war.resolve("weekend.rules"), here.resolve("weekend.rules"));
        Folders.retype(war.resolve("season.campaign"), "plays Published, Winter, Weekend", "plays Published");
    }

    @Test
    void theWinterLayerIsToldToTheLetter() {
        List<String> before = Folders.texts(war);
        Shell shell = Shell.in(here, "adopt", "winter.rules", "war");
        String armour = "    now  6:5: breach limit.at-most: Armour (Winter): at most 40 percent of points used on Armour,"
                + " that is ";
        String treads = "    now  6:5: breach limit.at-most: Tread troops (Winter): at most 2 of Tread troop; the list has ";
        assertEquals(List.of("Winter: to be played by A season.", "Not legal any more (5):",
                "  war/lists/brack-2.list (Brack, round 2): 140 points",
                armour + "56 of 140; the list has 60 points, 4 too many.",
                "  war/lists/nib-3.list (Nib, round 3): 150 points", treads + "3, 1 too many.",
                "  war/lists/quill-2.list (Quill, round 2): 140 points",
                armour + "56 of 140; the list has 60 points, 4 too many.", treads + "3, 1 too many.",
                "  war/lists/quill-3.list (Quill, round 3): 140 points",
                armour + "56 of 140; the list has 60 points, 4 too many.", treads + "3, 1 too many.",
                "  war/lists/tessel-3.list (Tessel, round 3): 149 points",
                armour + "59.6 of 149; the list has 60 points, 0.4 too many.", treads + "3, 1 too many.",
                "Not legal for other reasons (1):", "  war/lists/brack-3.list (Brack, round 3): 180 points",
                treads + "4, 2 too many.", armour.replace("6:5", "7:5")
                        + "72 of 180; the list has 80 points, 8 too many.",
                "    gone 7:5: breach limit.at-most: Tread troops (The published book): at most 3 of Tread troop; the list"
                        + " has 4, 1 too many.", "Unchanged: 3 lists."), shell.lines());
        assertEquals(1, shell.code());
        assertEquals(before, Folders.texts(war));
    }

    @Test
    void theWeekendAfterItMakesOneLegalAgain() throws IOException {
        Files.move(here.resolve("winter.rules"), war.resolve("winter.rules"));
        Folders.retype(war.resolve("season.campaign"), "plays Published", "plays Published, Winter");
        Shell shell = Shell.in(here, "adopt", "weekend.rules", "war");
        assertEquals(0, shell.code());
        assertEquals(List.of("Charity weekend: to be played by A season.",
                "Legal from now on (1):", "  war/lists/nib-3.list (Nib, round 3): 150 points"), shell.lines().subList(0, 3));
        assertTrue(shell.lines().contains("Not legal for other reasons (3):"), shell.out());
        assertEquals("Unchanged: 5 lists.", shell.lines().get(shell.lines().size() - 1));
    }

    @Test
    void aWeekendThatDoesNotSayThatItRelaxesIsSaidOfTheBook() throws IOException {
        Files.move(here.resolve("winter.rules"), war.resolve("winter.rules"));
        Folders.retype(war.resolve("season.campaign"), "plays Published", "plays Published, Winter");
        Folders.retype(here.resolve("weekend.rules"), "loosen Few-Treads", "change Few-Treads");
        Shell shell = Shell.in(here, "adopt", "weekend.rules", "war");
        assertEquals(1, shell.code());
        assertEquals("Said of the books (2):", shell.lines().get(1));
        assertTrue(shell.lines().get(2).startsWith("  war/weekend.rules:3:"), shell.out());
        assertEquals("Unchanged: 9 lists.", shell.lines().get(4));
    }

    @Test
    void aChangedVersionOfABookStandsAgainstThePresentOne() {
        Path changed = here.resolve("dearer.rules");
        Folders.write(changed, Folders.read(war.resolve("published.rules")).replace("for 1 point each", "for 2 points each"));
        Shell shell = Shell.in(here, "adopt", "dearer.rules", "war");
        assertEquals("The published book: the new text instead of the present one.", shell.lines().get(0));
        // 60 and twice 80 are 220 of 150; 40 and twice 80 are 200.
        assertTrue(shell.lines().contains("  war/lists/quill-2.list (Quill, round 2): 140 to 220 points"), shell.out());
        assertTrue(shell.lines().contains("  war/lists/nib-2.list (Nib, round 2): 120 to 200 points"), shell.out());
        assertEquals("Unchanged: 0 lists.", shell.lines().get(shell.lines().size() - 1));
        assertEquals(1, shell.code());
    }

    @Test
    void aUnitThatIsGoneIsNoticedInTheListsThatTakeIt() {
        Path changed = here.resolve("without.rules");
        Folders.write(changed, Folders.read(war.resolve("published.rules")).replace("unit Foot", "unit Feet"));
        Shell shell = Shell.in(here, "adopt", "without.rules", "war");
        assertTrue(shell.out().contains("breach name.unknown"), shell.out());
        assertTrue(shell.lines().contains("Unchanged: 0 lists."), shell.out());
    }

    @Test
    void whatCannotBeAdoptedIsAWrongCallThatSaysWhy() throws IOException {
        Files.move(here.resolve("winter.rules"), war.resolve("winter.rules"));
        Folders.retype(war.resolve("season.campaign"), "plays Published", "plays Published, Winter");
        assertWrong("is played already", "war/winter.rules", "war");
        Folders.write(here.resolve("alone.rules"), "rules Alone\n");
        assertWrong("no campaign in the folder plays it", "alone.rules", "war");
        Folders.write(here.resolve("odd.rules"), "list Dream\n");
        assertWrong("cannot be read as a book of rules", "odd.rules", "war");
        assertWrong("is no book of rules", "war/season.campaign", "war");
        assertWrong("There is no campaign in", "weekend.rules", "war/lists");
        assertWrong("needs a FOLDER", "weekend.rules");
    }

    private void assertWrong(String why, String... words) {
        Shell shell = Shell.in(here, words.length == 1 ? new String[] { "adopt", words[0] }
                : new String[] { "adopt", words[0], words[1] });
        assertEquals(2, shell.code());
        assertEquals("", shell.out());
        assertTrue(shell.err().contains(why), shell.err());
    }

    @Test
    void theJsonIsAsItsSchemaSaysAndItsEditsAdopt() throws IOException {
        Shell shell = Shell.in(here, "adopt", "--json", "winter.rules", "war");
        JsonObject answer = JsonParser.parseString(shell.out()).getAsJsonObject();
        JsonSchema schema = new JsonSchema(JsonParser.parseString(
                Files.readString(Project.file("docs/json/adopt.schema.json"))).getAsJsonObject());
        assertEquals(List.of(), schema.check(answer));
        assertEquals(3, answer.get("unchanged").getAsInt());
        JsonArray lists = answer.getAsJsonArray("lists");
        assertEquals(6, lists.size());
        assertEquals("now-breach", lists.get(0).getAsJsonObject().get("change").getAsString());
        JsonObject played = answer.getAsJsonArray("playedBy").get(0).getAsJsonObject();
        StringBuilder text = new StringBuilder(Folders.read(here.resolve(played.get("file").getAsString())));
        for (JsonElement each : played.getAsJsonArray("edits")) {
            JsonObject edit = each.getAsJsonObject();
            int offset = edit.get("offset").getAsInt();
            text.replace(offset, offset + edit.get("length").getAsInt(), edit.get("text").getAsString());
        }
        assertTrue(text.toString().contains("\nplays Published, Winter\n"), text.toString());
    }

    @Test
    void aCampaignThatPlaysNothingYetBeginsToPlay() throws IOException {
        Folders.retype(war.resolve("season.campaign"), "plays Published\n", "");
        Folders.retype(war.resolve("season.campaign"), "excuse Brack from Few-Treads at Tread-Troop in round 2 by Ombra",
                "# nobody is let off\n# by Ombra");
        Files.move(war.resolve("published.rules"), here.resolve("published.rules"));
        Shell shell = Shell.in(here, "adopt", "published.rules", "war");
        assertEquals(List.of("The published book: to be played by A season.", "Legal from now on (7):"),
                shell.lines().subList(0, 2));
        assertTrue(shell.lines().contains("  war/lists/quill-2.list (Quill, round 2): unknown to 140 points"), shell.out());
        assertEquals(0, shell.code());
    }
}
