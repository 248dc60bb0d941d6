package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

/** One squadron through three eras, at large and with what is owned; invented, every sum worked out by hand. */
class ErasTest {
    private static final List<String> REED = List.of("", "The Reed Year: not legal, 98 of 100 points.",
            "  era.not-yet: Marsh scouts: not yet in The Reed Year; available from The Dyke War.",
            "  Least change: 8 points moved, 1 unit, 90 of 100 points after it. Proven: nothing moves less.",
            "    Take out Marsh scouts.");
    private static final List<String> THAW = List.of("", "The Long Thaw: not legal, 105 of 100 points.",
            "  era.no-longer: Crank troop: no longer in The Long Thaw; its place is taken by Pike car troop. (2 times)",
            "  Least change: 66 points moved, 3 units, 91 of 100 points after it. Proven: nothing moves less.",
            "    Take out Crank troop.", "    Take Pike car troop instead of Crank troop.");

    @TempDir
    Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("causey-season", folder);
    }

    @Test
    void theLeastChangeAndTheLeastWithWhatIsOwnedAreToldToTheLetter() {
        Shell shell = Shell.in(folder, "eras", "lists/ombra-1.list");
        List<String> lines = shell.lines();
        assertEquals(0, shell.code());
        assertEquals("Ombra, round 1, written for The Dyke War.", lines.get(0));
        assertEquals(REED, lines.subList(1, 6));
        assertEquals(List.of("  With what Ombra owns: the same.", "", "The Dyke War: legal, 98 of 100 points.",
                "  With what Ombra owns: all of it can be fielded as it is written."), lines.subList(6, 10));
        assertEquals(THAW, lines.subList(10, 16));
        assertEquals(List.of("  With what Ombra owns: 67 points moved, 3 units, 92 of 100 points after it. Proven: nothing"
                + " moves less.", "    Take out 2 Crank troop.", "    Add Tread troop of 3 to Causey squadron."),
                lines.subList(16, lines.size()));
    }

    @Test
    void whoOwnsPikeCarsNeedsNothingElse() {
        List<String> lines = Shell.in(folder, "eras", "lists/brack-1.list").lines();
        assertEquals("  With what Brack owns: the same.", lines.get(lines.size() - 1));
        List<String> ombras = Shell.in(folder, "eras", "lists/ombra-1.list", "--shelf", "shelves/brack.shelf").lines();
        assertEquals("  With what Brack owns: the same.", ombras.get(ombras.size() - 1));
    }

    @Test
    void likenessLetsOneStandForAnother() {
        Folders.write(folder.resolve("season.campaign"), Folders.read(folder.resolve("season.campaign"))
                + "likeness Club-Table\n  . lets Crank-Car stand for Pike-Car\n");
        List<String> lines = Shell.in(folder, "eras", "lists/ombra-1.list").lines();
        assertEquals("  With what Ombra owns: the same.", lines.get(lines.size() - 1));
    }

    @Test
    void whoHasNoShelfIsTold() {
        List<String> lines = Shell.in(folder, "eras", "lists/nib-1.list").lines();
        assertEquals("Nib has no shelf here, so nothing is known of what is owned.", lines.get(1));
        assertEquals(THAW, lines.subList(lines.size() - THAW.size(), lines.size()));
        Folders.write(folder.resolve("lists/dream.list"), Folders.read(folder.resolve("lists/nib-1.list"))
                .replace("list by Nib round 1", "list Dream under Causey-Book in Dyke-War to 100 points"));
        lines = Shell.in(folder, "eras", "lists/dream.list").lines();
        assertEquals(List.of("Dream, written for The Dyke War.",
                "This list has no player, so nothing is known of what is owned."), lines.subList(0, 2));
        assertEquals(THAW, lines.subList(lines.size() - THAW.size(), lines.size()));
    }

    @Test
    void theNextBestIsToldOnRequest() {
        List<String> lines = Shell.in(folder, "eras", "lists/nib-1.list", "--next", "1").lines();
        int next = lines.indexOf("  Next best: 67 points moved, 3 units, 92 of 100 points after it.");
        assertTrue(next > 0, () -> String.join("\n", lines));
        assertEquals(List.of("    Take out 2 Crank troop.", "    Add Tread troop of 3 to Causey squadron."),
                lines.subList(next + 1, next + 3));
    }

    @Test
    void theReplyFitsIntoAChat() {
        Shell shell = Shell.in(folder, "eras", "--reply", "lists/ombra-1.list");
        assertEquals("The Reed Year: not yet. Marsh scouts: not yet in The Reed Year; available from The Dyke War. Least"
                + " change: Marsh scouts out (90 of 100). Ombra owns what it takes. The Long Thaw: not yet. Crank troop:"
                + " no longer in The Long Thaw; its place is taken by Pike car troop. (and 1 more) Least change: Crank"
                + " troop out, Pike car troop for Crank troop (91 of 100). With what Ombra owns: 2 Crank troop out, Tread"
                + " troop of 3 in (92 of 100).\n", shell.out());
        assertTrue(shell.out().length() < 500);
    }

    @Test
    void theJsonIsAsItsSchemaSaysAndItsEditsMakeTheListLegal() throws IOException {
        JsonObject answer = json("eras", "--json", "--next", "1", "lists/ombra-1.list");
        assertEquals(List.of(), schema("eras").check(answer));
        JsonArray eras = answer.getAsJsonArray("eras");
        assertEquals(3, eras.size());
        JsonObject thaw = eras.get(2).getAsJsonObject();
        JsonObject least = change(thaw, "least");
        assertEquals(List.of(66, 91), List.of(least.get("moved").getAsInt(), least.get("points").getAsInt()));
        JsonObject owned = change(thaw, "leastOwned");
        assertEquals(List.of(67, 92), List.of(owned.get("moved").getAsInt(), owned.get("points").getAsInt()));
        Path list = folder.resolve("lists/ombra-1.list");
        for (JsonObject change : List.of(least, owned)) {
            Folders.write(list, edited(Folders.read(folder.resolve("lists/brack-1.list")).replace("# The same as Ombra's.",
                    "# As written: 98 points, legal.").replace("by Brack", "by Ombra"), change));
            Folders.retype(folder.resolve("season.campaign"), "era Dyke-War", "era Long-Thaw");
            assertEquals("", Shell.in(folder, "check", "lists/ombra-1.list").out());
            assertEquals("lists/ombra-1.list: " + change.get("points").getAsInt() + " points of 100",
                    Shell.in(folder, "points", "lists/ombra-1.list").lines().get(0));
            Folders.retype(folder.resolve("season.campaign"), "era Long-Thaw", "era Dyke-War");
        }
    }

    private JsonObject json(String... call) {
        return JsonParser.parseString(Shell.in(folder, call).out()).getAsJsonObject();
    }

    private static JsonSchema schema(String name) throws IOException {
        return new JsonSchema(JsonParser.parseString(
                Files.readString(Project.file("docs/json/" + name + ".schema.json"))).getAsJsonObject());
    }

    private static JsonObject change(JsonObject era, String which) {
        return era.getAsJsonObject(which).getAsJsonArray("changes").get(0).getAsJsonObject();
    }

    private static String edited(String text, JsonObject change) {
        StringBuilder edited = new StringBuilder(text);
        List<JsonObject> edits = change.getAsJsonArray("edits").asList().stream().map(JsonElement::getAsJsonObject)
                .sorted((a, b) -> b.get("offset").getAsInt() - a.get("offset").getAsInt()).toList();
        assertFalse(edits.isEmpty());
        edits.forEach(edit -> edited.replace(edit.get("offset").getAsInt(), edit.get("offset").getAsInt()
                + edit.get("length").getAsInt(), edit.get("text").getAsString()));
        return edited.toString();
    }

    @Test
    void aListThatIsNotLegalWhereItIsWrittenEndsWithOne() {
        Folders.retype(folder.resolve("season.campaign"), "limit 100", "limit 90");
        assertEquals(1, Shell.in(folder, "eras", "lists/ombra-1.list").code());
    }

    @Test
    void aShelfIsToldWhatItFieldsAndWhatCarriesOver() throws IOException {
        Shell shell = Shell.in(folder, "eras", "shelves/ombra.shelf");
        assertEquals(0, shell.code());
        // Reed: staff 10, treads of 5 and of 3 64, two cranks 40; Dyke: and scouts 8; Thaw: staff 12, treads 72, scouts 8
        assertEquals(List.of("The shelf of Ombra, by The causey book.", "",
                "The Reed Year: at most 114 points at once; 17 pieces of use.", "  Staff, 10 points",
                "  Tread troop of 3, 24 points", "  Tread troop of 5, 40 points", "  2 Crank troop of 4, 40 points",
                "  Can be fielded, one kind at a time: Staff, Tread troop 2 times, Crank troop 2 times."),
                shell.lines().subList(0, 8));
        assertTrue(shell.lines().contains("The Dyke War: at most 122 points at once; 21 pieces of use."), shell.out());
        assertTrue(shell.lines().contains("The Long Thaw: at most 92 points at once; 13 pieces of use."), shell.out());
        assertTrue(shell.lines().contains("  Not to be fielded: Pike car troop (4 short)."), shell.out());
        assertTrue(shell.lines().contains("  The Dyke War to The Long Thaw: 13 of 21 pieces (61 percent), 82 of 122 points"
                + " (67 percent)"), shell.out());
        assertTrue(shell.lines().contains("  The Reed Year to The Dyke War: 17 of 17 pieces (100 percent), 114 of 114"
                + " points (100 percent)"), shell.out());
        JsonObject answer = json("eras", "--json", "shelves/ombra.shelf");
        assertEquals(List.of(), schema("shelf-eras").check(answer));
        assertEquals(9, answer.getAsJsonArray("carries").size());
        assertTrue(Shell.in(folder, "eras", "--reply", "shelves/ombra.shelf").out().startsWith(
                "The Reed Year: at most 114 points at once, Staff, Tread troop of 3, "));
    }

    @Test
    void whatCannotBeAskedIsAWrongCallThatSaysWhy() {
        assertWrong("is no list and no shelf", "season.campaign");
        assertWrong("is no number from 0 to 9", "lists/ombra-1.list", "--next", "10");
        assertWrong("two ways to answer", "lists/ombra-1.list", "--json", "--reply");
        assertWrong("is no shelf of the same folder", "lists/ombra-1.list", "--shelf", "works.range");
        assertWrong("are for lists", "shelves/ombra.shelf", "--next", "1");
        Folders.write(folder.resolve("lists/loose.list"), "list Loose\nCausey-Squadron\n");
        assertWrong("Nobody says which rules this list is under", "lists/loose.list");
        Folders.write(folder.resolve("lists/empty.list"), "");
        assertWrong("cannot be read as a list", "lists/empty.list");
    }

    private void assertWrong(String why, String... words) {
        String[] call = new String[words.length + 1];
        call[0] = "eras";
        System.arraycopy(words, 0, call, 1, words.length);
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.err());
        assertEquals("", shell.out());
        assertTrue(shell.err().contains(why), shell.err());
    }
}
