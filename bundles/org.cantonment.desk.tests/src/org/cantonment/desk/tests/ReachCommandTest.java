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

import com.google.gson.JsonParser;

/**
 * How far a shelf is from each formation; worked out by hand. That five of one vehicle make a headquarters of two and a
 * platoon of three, and eight more bulk out that platoon and make a second, is common practice, no source.
 */
class ReachCommandTest {

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        book("works.range", """
                range Works in EUR
                piece Tank
                piece Foot
                part Frame "Tank frame"
                  . builds Tank
                box T-1 "One tank"
                  . Frame
                  . price 12.00 from 2031-01-01
                box T-3 "Three tanks"
                  . 3 Frame
                  . price 30.00 from 2031-01-01
                box F-5 "Five on foot"
                  . 5 Foot
                  . price 6.00 from 2031-06-01
                """);
        book("pond.rules", """
                rules Pond "The pond book"
                era Reed-Year "The Reed Year"
                era Dyke-War "The Dyke War" after Reed-Year
                side Weir "Weir"
                side Fen "Fen"
                unit Head "Headquarters"
                  . strength 2 for 10 points
                  . each needs Tank
                unit Platoon "Platoon"
                  . strength 3 for 15 points
                  . strength 5 for 25 points
                  . each needs Tank
                unit Crowd "Crowd"
                  . strength 10 for 5 points
                  . each needs Foot
                  . available from Dyke-War
                formation Company "Tank company"
                  . billet Command 1 of Head
                  . billet Line 1 to 2 of Platoon
                formation Regiment "Regiment"
                  . billet Companies 2 of Company
                formation Mob "Mob"
                  . billet Mass 1 of Crowd
                formation Raft "Raft"
                  . side Fen
                  . billet Mass 1 of Head
                """);
        book("season.campaign", "campaign Season from 2031-03-01\nplays Pond\nplayer Ombra\n  . side Weir\nplayer Brack\n");
        book("ombra.shelf", "shelf of Ombra\n5 Tank\n4 Foot\n");
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    @Test
    void fiveMakeTheLeastCompanyAndEightMoreTheGreatest() {
        List<String> lines = Shell.in(folder, "reach", "Ombra").lines();
        // Seven frames: two boxes of three and one of one are 72.00, three boxes of three 90.00.
        assertEquals(List.of("Ombra: 2 of 6 formations can be fielded now.",
                "Money by prices of 2031-03-01 (the day on which the campaign begins).", "Tank company, The Reed Year: now.",
                "  at least: Headquarters of 2, Platoon of 3: now.",
                "  at most:  Headquarters of 2, 2 Platoon of 5: 7 pieces away: 7 Tank.",
                "            For 72.00 EUR: 1 One tank and 2 Three tanks."), lines.subList(0, 6));
        book("ombra.shelf", "shelf of Ombra\n13 Tank\n");
        assertTrue(Shell.in(folder, "reach", "ombra").lines().contains("  at most:  Headquarters of 2, 2 Platoon of 5: now."));
    }

    @Test
    void nearestComeFirstAndFormationsAreTakenApart() {
        List<String> lines = Shell.in(folder, "reach", "Ombra").lines();
        List<String> heads = lines.stream().filter(line -> !line.startsWith(" ")).toList();
        // Five frames are a box of three and two of one: 54.00; two boxes of three are 60.00. Nobody sells Foot in March.
        assertEquals(List.of("Tank company, The Reed Year: now.", "Tank company, The Dyke War: now.",
                "Regiment, The Reed Year: 5 pieces or 54.00 EUR away.", "Regiment, The Dyke War: 5 pieces or 54.00 EUR away.",
                "Mob, The Dyke War: 6 pieces away.", "Mob, The Reed Year: no unit may stand in it."), heads.subList(2, 8));
        assertTrue(lines.contains("            Not to be had: nobody sells Foot, or what may stand for it."), lines.toString());
        assertTrue(lines.stream().noneMatch(line -> line.startsWith("Raft")), lines.toString());
    }

    @Test
    void pricesAreThoseOfTheDay() {
        List<String> lines = Shell.in(folder, "reach", "Ombra", "--on", "2031-07-01").lines();
        assertTrue(lines.contains("Mob, The Dyke War: 6 pieces or 12.00 EUR away."), lines.toString());
        lines = Shell.in(folder, "reach", "Ombra", "--pieces").lines();
        assertTrue(lines.contains("Regiment, The Reed Year: 5 pieces away."), lines.toString());
        assertTrue(lines.stream().noneMatch(line -> line.contains("EUR")), lines.toString());
    }

    @Test
    void whereNothingIsSoldThePiecesAreToldAllTheSame() {
        book("works.range", "range Works in EUR\npiece Tank\npiece Foot\n");
        List<String> lines = Shell.in(folder, "reach", "Ombra").lines();
        assertEquals("No money is told. There is no range with boxes in this folder, so nothing can be bought.", lines.get(1));
        assertTrue(lines.contains("Regiment, The Reed Year: 5 pieces away."), lines.toString());
    }

    @Test
    void theCheapestMayBeAnotherFillingThanTheNearest() {
        book("pond.rules", """
                rules Pond "The pond book"
                era Reed-Year "The Reed Year"
                unit Platoon "Platoon"
                  . strength 2 for 15 points
                  . each needs Tank
                unit Crowd "Crowd"
                  . strength 9 for 5 points
                  . each needs Foot
                formation Company "Company"
                  . billet Line 1 of Platoon, Crowd
                """);
        book("ombra.shelf", "shelf of Ombra\n4 Foot\n");
        assertEquals(List.of("Company, The Reed Year: 2 pieces or 6.00 EUR away.",
                "  at least: Platoon of 2: 2 pieces away: 2 Tank.",
                "            For 6.00 EUR: 1 Five on foot; filled with Crowd of 9."),
                Shell.in(folder, "reach", "Ombra", "--on", "2031-07-01").lines().subList(2, 5));
    }

    @Test
    void boxesThatOpenMostForTheirMoneyComeFirst() {
        book("ombra.shelf", "shelf of Ombra\n4 Tank\n5 Foot\n");
        assertEquals(List.of("Ombra: 3 of 3 boxes on sale bring more within reach by themselves, by prices of 2031-07-01"
                + " (as asked).", "Five on foot (F-5), 6.00 EUR from Works: 1 more.", "  Mob, at least: The Dyke War.",
                "One tank (T-1), 12.00 EUR from Works: 2 more.", "  Tank company, at least: The Reed Year, The Dyke War.",
                "Three tanks (T-3), 30.00 EUR from Works: 2 more.",
                "  Tank company, at least: The Reed Year, The Dyke War."),
                Shell.in(folder, "reach", "Ombra", "--boxes", "--on", "2031-07-01").lines());
    }

    @Test
    void theWeekMakesTheShelf() {
        book("week-1.week", "week 1 of Season\nOmbra found 6 Foot\n");
        assertTrue(Shell.in(folder, "reach", "Ombra", "--era", "Dyke-War").lines().contains("Mob, The Dyke War: now."));
        List<String> lines = Shell.in(folder, "reach", "Ombra", "--week", "1", "--era", "the dyke war").lines();
        assertEquals("Ombra: 2 of 3 formations can be fielded now, as known after week 1.", lines.get(0));
    }

    @Test
    void jsonIsAsDocumentedAndRepliesAreShort() throws IOException {
        JsonSchema schema = new JsonSchema(JsonParser.parseString(Files.readString(Project.file(
                "docs/json/reach.schema.json"))).getAsJsonObject());
        assertEquals(List.of(), schema.check(JsonParser.parseString(Shell.in(folder, "reach", "Ombra", "--json").out())));
        JsonSchema boxes = new JsonSchema(JsonParser.parseString(Files.readString(Project.file(
                "docs/json/reach-boxes.schema.json"))).getAsJsonObject());
        assertEquals(List.of(), boxes.check(JsonParser.parseString(Shell.in(folder, "reach", "Ombra", "--boxes", "--json",
                "--on", "2031-07-01").out())));
        String reply = Shell.in(folder, "reach", "Ombra", "--reply").out();
        assertTrue(reply.length() < 500 && reply.startsWith("Ombra: 2 of 6 formations can be fielded now. Now: Tank company."
                + " Regiment, The Reed Year: 5 pieces or 54.00 EUR away: 5 Tank."), reply);
        assertTrue(Shell.in(folder, "reach", "Ombra", "--boxes", "--reply").out().length() < 500);
    }

    @Test
    void wrongCallsAreAnswered() {
        assertWrong("Did you mean 'Ombra'?", "reach", "Obra");
        assertWrong("has no shelf here", "reach", "Brack");
        assertWrong("tells no money", "reach", "Ombra", "--pieces", "--boxes");
        assertWrong("There is no maker or seller 'Nobody' here.", "reach", "Ombra", "--from", "Nobody");
        assertWrong("there are Reed-Year, Dyke-War", "reach", "Ombra", "--era", "Summer");
    }

    private void assertWrong(String words, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.out());
        assertTrue(shell.err().contains(words), shell.err());
    }
}
