package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The command line tells which checks of others are at hand, and asks them. */
class ChecksCommandTest {
    @TempDir
    Path folder;
    private final Guests guests = new Guests();

    @BeforeEach
    void write() throws IOException {
        SmallWar.into(folder);
        Files.writeString(folder.resolve("heron.campaign"), SmallWar.CAMPAIGN
                + "check Painted-Share with Share 60 percent from round 2\ncheck Fords\n");
        guests.enter(new TestCheck.PaintedShare(), new Origin("org.fen.checks", "1.2.0",
                Optional.of(folder.resolve("paint.jar")), 1));
        guests.refuse(new Origin("broken.jar", "", Optional.of(folder.resolve("broken.jar")), 1),
                "The jar broken.jar in the folder of checks is no plug-in.");
    }

    private Shell call(String... words) {
        return Shell.in(folder, Optional.of(guests), words);
    }

    @Test
    void eachCheckIsToldWithItsPluginSettingsAndFindings() {
        Shell shell = call("checks");
        assertEquals(0, shell.code());
        assertEquals(List.of("Painted-Share (painted share): Looks after the painted share.",
                "  from plug-in org.fen.checks 1.2.0 (paint.jar)",
                "  with Share (Painted share): a number of percent from 0 to 100; 50 percent if nothing is written."
                        + " How much must be painted, by pieces.",
                "  finds breach check.painted-share.too-little: Too little of the shelf is painted.",
                "not let in: The jar broken.jar in the folder of checks is no plug-in."),
                shell.lines().subList(0, 5));
        assertTrue(shell.lines().get(5).startsWith("A jar with checks goes into "), shell.out());
        assertTrue(call("checks", ".").out().contains("The Heron season turns on Painted-Share: is at hand.\n"
                + "The Heron season turns on Fords: No check called 'Fords' is installed here, so nothing is judged by it."));
        assertEquals("No checks of others are at hand.", Shell.in(folder, "checks").lines().get(0));
    }

    @Test
    void theJsonIsAsItsSchemaSays() throws IOException {
        JsonObject answer = JsonParser.parseString(call("checks", "--json", ".").out()).getAsJsonObject();
        JsonSchema schema = new JsonSchema(JsonParser.parseString(
                Files.readString(Project.file("docs/json/checks.schema.json"))).getAsJsonObject());
        assertEquals(List.of(), schema.check(answer));
        assertEquals("paint.jar", answer.getAsJsonArray("checks").get(0).getAsJsonObject().get("file").getAsString());
        assertEquals(2, answer.getAsJsonArray("uses").size());
        assertEquals("check.missing", answer.getAsJsonArray("uses").get(1).getAsJsonObject().getAsJsonArray("findings")
                .get(0).getAsJsonObject().get("code").getAsString());
        answer.remove("folder");
        assertEquals(1, schema.check(answer).size(), "the schema is held against something that it must refuse");
    }

    @Test
    void theReferenceIsMadeOfWhatTheCheckDeclares() {
        assertEquals("""
                ## `Painted-Share`: painted share

                Looks after the painted share.

                    check Painted-Share with Share 50 percent

                From plug-in org.fen.checks 1.2.0 (paint.jar).

                | setting | takes | if nothing is written | means |
                | --- | --- | --- | --- |
                | `Share` | a number of percent from 0 to 100 | 50 percent | Painted share: How much must be painted, by pieces. |

                | code | usually | means |
                | --- | --- | --- |
                | `check.painted-share.too-little` | breach | Too little of the shelf is painted. |
                """, call("checks", "Painted-Share", "--reference").out());
    }

    @Test
    void aNameThatIsNotAtHandIsTwoAndTheNearestIsNamed() {
        Shell shell = call("checks", "Painted-Shaer");
        assertEquals(2, shell.code());
        assertEquals("cantonment: There is no check 'Painted-Shaer' at hand. Did you mean 'Painted-Share'?",
                shell.err().strip());
    }

    @Test
    void whoeverJudgesAsksThem() {
        Shell check = call("check", "lists/ombra-2.list");
        assertEquals(1, check.code());
        assertEquals("lists/ombra-2.list:1:1: breach check.painted-share.too-little: 2 of 4 pieces are painted.",
                check.lines().get(0));
        assertTrue(call("roundup", ".").out().contains("2 of 4 pieces are painted."));
        assertEquals(0, Shell.in(folder, "check", "lists/ombra-2.list").code());
        assertTrue(Shell.in(folder, "check", "lists/ombra-2.list").out().contains("check.missing"));
    }
}
