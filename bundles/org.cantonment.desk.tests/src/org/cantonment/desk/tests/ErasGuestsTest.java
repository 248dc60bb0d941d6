package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * What a check of others calls a breach is not called legal in any era, and the least change is the least that contents it,
 * too: at most 90 points by the check, where the least changes by the rules come to 90 and 91. Invented, every sum worked out
 * by hand.
 */
class ErasGuestsTest {
    private static final String AT_98 = "98 points are more than 90.";
    private static final String STILL = "Legal by the rules; the check Thrift still says: ";

    @TempDir
    Path folder;
    private final Guests guests = new Guests();

    @BeforeEach
    void copy() {
        Folders.copy("causey-season", folder);
        turnOn("check Thrift");
        guests.enter(new TestCheck.Thrift(), Origin.installed("org.fen.checks", "1.2.0", 1));
    }

    private void turnOn(String... lines) {
        Path campaign = folder.resolve("season.campaign");
        Folders.write(campaign, Folders.read(campaign) + String.join("\n", lines) + "\n");
    }

    private Shell eras(String... words) {
        String[] all = new String[words.length + 1];
        all[0] = "eras";
        System.arraycopy(words, 0, all, 1, words.length);
        return Shell.in(folder, Optional.of(guests), all);
    }

    @Test
    void eachProposedListIsAskedAboutAndSaysSoPlainly() {
        Shell shell = eras("lists/nib-1.list");
        List<String> lines = shell.lines();
        assertEquals(List.of("The Reed Year: not legal, 98 of 100 points.",
                "  era.not-yet: Marsh scouts: not yet in The Reed Year; available from The Dyke War.",
                "  check.thrift.spendthrift: " + AT_98,
                "  Least change: 8 points moved, 1 unit, 90 of 100 points after it. Proven: nothing moves less.",
                "    Take out Marsh scouts.", "", "The Dyke War: not legal, 98 of 100 points.", "  " + STILL + AT_98,
                "  Least change: 8 points moved, 1 unit, 90 of 100 points after it. Proven: nothing moves less.",
                "    Take out Marsh scouts.", "",
                "The Long Thaw: not legal, 105 of 100 points.",
                "  era.no-longer: Crank troop: no longer in The Long Thaw; its place is taken by Pike car troop. (2 times)",
                "  check.thrift.spendthrift: 105 points are more than 90.",
                "  Least change: 74 points moved, 4 units, 83 of 100 points after it. Proven: nothing moves less.",
                "    Take out Crank troop.", "    Take out Marsh scouts.",
                "    Take Pike car troop instead of Crank troop."), lines.subList(3, lines.size()));
        assertEquals(1, shell.code(), "it is not legal where it is written");
    }

    @Test
    void theSameForAChatAndWithWhatIsOwned() {
        String reply = eras("--reply", "lists/ombra-1.list").out();
        assertTrue(reply.contains("The Dyke War: not yet. " + STILL + AT_98
                + " Least change: Marsh scouts out (90 of 100). Ombra owns what it takes."), reply);
        assertTrue(reply.length() < 500, reply);
        List<String> lines = eras("lists/ombra-1.list").lines();
        // Both cranks 40 and the scouts 8 out, a tread troop of three for 27 in: no pike cars are owned.
        assertEquals("  With what Ombra owns: 75 points moved, 4 units, 84 of 100 points after it. Proven: nothing moves less.",
                lines.get(lines.size() - 4));
    }

    @Test
    void theJsonSaysItOfEachListAndKeepsToItsSchema() throws IOException {
        JsonObject answer = JsonParser.parseString(eras("--json", "lists/ombra-1.list").out()).getAsJsonObject();
        assertEquals(List.of(), new JsonSchema(JsonParser.parseString(Files.readString(
                Project.file("docs/json/eras.schema.json"))).getAsJsonObject()).check(answer));
        JsonArray eras = answer.getAsJsonArray("eras");
        JsonObject dyke = eras.get(1).getAsJsonObject();
        assertFalse(dyke.get("legal").getAsBoolean());
        assertEquals(90, least(eras, 1).get("points").getAsInt());
        JsonObject breach = dyke.getAsJsonArray("breaches").get(0).getAsJsonObject();
        assertEquals(List.of("Thrift", "check.thrift.spendthrift", AT_98), List.of(breach.get("check").getAsString(),
                breach.get("code").getAsString(), breach.get("message").getAsString()));
        assertTrue(least(eras, 0).get("legal").getAsBoolean());
        assertTrue(least(eras, 2).get("legal").getAsBoolean());
        assertEquals(0, least(eras, 2).getAsJsonArray("breaches").size());
        assertEquals(0, answer.getAsJsonArray("unasked").size());
    }

    private static JsonObject least(JsonArray eras, int era) {
        return eras.get(era).getAsJsonObject().getAsJsonObject("least").getAsJsonArray("changes").get(0).getAsJsonObject();
    }

    @Test
    void aDispensationHoldsThereTooAndALineForOneEraOnlyThere() {
        turnOn("excuse Nib from Thrift in round 1 by Ombra \"Guest\"");
        Shell shell = eras("lists/nib-1.list");
        assertFalse(shell.out().contains("90."), shell.out());
        assertEquals(0, shell.code());
        Folders.retype(folder.resolve("season.campaign"), "check Thrift\nexcuse Nib from Thrift in round 1 by Ombra \"Guest\"",
                "check Thrift in Long-Thaw");
        String out = eras("lists/nib-1.list").out();
        assertTrue(out.contains("The Dyke War: legal, 98 of 100 points."), out);
        assertTrue(out.contains("83 of 100 points after it"), out);
    }

    @Test
    void whereNothingContentsACheckTheChangeByTheRulesIsTold() {
        guests.enter(new TestCheck.Never(), Origin.installed("org.fen.never", "1.0.0", 2));
        Folders.retype(folder.resolve("season.campaign"), "check Thrift", "check Never");
        List<String> lines = eras("lists/nib-1.list").lines();
        assertEquals(List.of("The Reed Year: not legal, 98 of 100 points.",
                "  era.not-yet: Marsh scouts: not yet in The Reed Year; available from The Dyke War.",
                "  check.never.no: No, not even 98 points.",
                "  Least change: 8 points moved, 1 unit, 90 of 100 points after it. Proven: nothing moves less.",
                "    Take out Marsh scouts.", "    Legal by the rules; the check Never still says: No, not even 90 points.", "",
                "The Dyke War: not legal, 98 of 100 points.",
                "  Legal by the rules; the check Never still says: No, not even 98 points."), lines.subList(3, 12));
        assertEquals(1, eras("lists/nib-1.list").code());
    }

    @Test
    void aCheckThatCannotBeAskedIsSaidAtTheTop() {
        turnOn("check Fords");
        List<String> lines = eras("lists/nib-1.list").lines();
        assertEquals("No check called 'Fords' is installed here, so nothing is judged by it.", lines.get(2));
        String plain = Shell.in(folder, "eras", "lists/nib-1.list").lines().get(2);
        assertEquals("No check called 'Thrift' is installed here, so nothing is judged by it.", plain);
    }

    @Test
    void whatAdoptingDoesIsJudgedByThemAsWell() {
        Folders.write(folder.resolve("dear.rules"), "rules Dear over Causey-Book\nchange Marsh-Scouts\n"
                + "  . strength 1 for 0 points\n");
        Folders.write(folder.resolve("lists/ombra-1.list"), "list by Ombra round 1\nCausey-Squadron\n  . Staff\n"
                + "  . Tread-Troop of 5\n  . 2 Crank-Troop\n  . Marsh-Scouts\n");
        Shell shell = Shell.in(folder, Optional.of(guests), "adopt", "dear.rules", ".");
        assertTrue(shell.out().contains("Legal from now on (3):"), shell.out());
        assertTrue(shell.out().contains("check.thrift.spendthrift: " + AT_98), shell.out());
    }
}
