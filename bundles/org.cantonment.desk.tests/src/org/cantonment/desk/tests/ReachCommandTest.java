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
        book("works.range", "range Works in EUR\npiece Tank\npiece Foot\n");
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
        book("season.campaign", "campaign Season\nplays Pond\nplayer Ombra\n  . side Weir\nplayer Brack\n");
        book("ombra.shelf", "shelf of Ombra\n5 Tank\n4 Foot\n");
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    @Test
    void fiveMakeTheLeastCompanyAndEightMoreTheGreatest() {
        List<String> lines = Shell.in(folder, "reach", "Ombra").lines();
        assertEquals(List.of("Ombra: 2 of 6 formations can be fielded now.", "Tank company, The Reed Year: now.",
                "  at least: Headquarters of 2, Platoon of 3: now.",
                "  at most:  Headquarters of 2, 2 Platoon of 5: 7 pieces away: 7 Tank."), lines.subList(0, 4));
        book("ombra.shelf", "shelf of Ombra\n13 Tank\n");
        assertTrue(Shell.in(folder, "reach", "ombra").lines().contains("  at most:  Headquarters of 2, 2 Platoon of 5: now."));
    }

    @Test
    void nearestComeFirstAndFormationsAreTakenApart() {
        List<String> lines = Shell.in(folder, "reach", "Ombra").lines();
        List<String> heads = lines.stream().filter(line -> !line.startsWith(" ")).toList();
        assertEquals(List.of("Tank company, The Reed Year: now.", "Tank company, The Dyke War: now.",
                "Regiment, The Reed Year: 5 pieces away.", "Regiment, The Dyke War: 5 pieces away.",
                "Mob, The Dyke War: 6 pieces away.", "Mob, The Reed Year: no unit may stand in it."), heads.subList(1, 7));
        assertTrue(lines.stream().noneMatch(line -> line.startsWith("Raft")), lines.toString());
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
        assertTrue(Shell.in(folder, "reach", "Ombra", "--reply").out().length() < 500);
    }

    @Test
    void wrongCallsAreAnswered() {
        assertWrong("Did you mean 'Ombra'?", "reach", "Obra");
        assertWrong("has no shelf here", "reach", "Brack");
        assertWrong("there are Reed-Year, Dyke-War", "reach", "Ombra", "--era", "Summer");
    }

    private void assertWrong(String words, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.out());
        assertTrue(shell.err().contains(words), shell.err());
    }
}
