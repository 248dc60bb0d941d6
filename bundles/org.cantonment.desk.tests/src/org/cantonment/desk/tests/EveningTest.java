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

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Evenings with what is borrowed, shared, worked over and of one meaning; every number solved by hand. */
class EveningTest {
    private static final String LETS = "likeness Club\n  . lets Crank stand for Tread\n";

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        book("works.range", "range Works\npiece Tread \"Tread wagon\"\npiece Crank \"Crank car\"\npiece Scout\n"
                + "part Hull\n  . builds Tread\n  . builds Crank\n");
        book("pond.rules", """
                rules Pond "The pond book"
                unit Treads
                  . strength 1 to 9 for 8 points
                  . each needs Tread
                unit Cranks
                  . strength 1 to 9 for 8 points
                  . each needs Crank
                """);
        book("season.campaign", """
                campaign Season
                plays Pond
                player Ombra
                player Brack
                player Quill
                round 1
                  . session Tuesday
                  . Ombra meets Brack in Tuesday
                """);
        book("ombra.list", "list by Ombra round 1\nTreads of 2\n");
        book("brack.list", "list by Brack round 1\nTreads of 2\n");
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    private List<String> tuesday() {
        return Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".").lines();
    }

    @Test
    void whatAListBorrowsHasChangedHandsAndIsNotLentAgain() throws IOException {
        book("ombra.shelf", "shelf of Ombra\n2 Tread\n");
        book("brack.shelf", "shelf of Brack\n1 Tread\n");
        book("quill.shelf", "shelf of Quill\n1 Tread\n");
        assertEquals(List.of("Tuesday of round 1: all 2 lists can be played, one lends.", "  Quill lends 1 Tread wagon to Brack."),
                tuesday().subList(0, 2));
        book("brack.list", "list by Brack round 1\nTreads of 2\nborrow Tread from Quill\n");
        List<String> lines = tuesday();
        assertEquals(List.of("Tuesday of round 1: all 2 lists can be played, nobody need lend anything.",
                "  Brack has borrowed 1 Tread wagon from Quill."), lines.subList(0, 2));
        assertTrue(lines.stream().noneMatch(line -> line.contains("lends")), lines.toString());
        book("ombra.list", "list by Ombra round 1\nTreads of 3\nborrow 2 Tread from Quill\n");
        lines = tuesday();
        assertTrue(lines.contains("  Of 2 Tread wagon that are to be borrowed from Quill, only 0 are there."), lines.toString());
        assertTrue(lines.get(0).contains("1 piece is short"), lines.get(0));
        JsonObject answer = JsonParser.parseString(Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".",
                "--json").out()).getAsJsonObject();
        assertEquals(List.of(), new JsonSchema(JsonParser.parseString(Files.readString(Project.file(
                "docs/json/turnout.schema.json"))).getAsJsonObject()).check(answer));
        assertEquals(2, answer.getAsJsonObject("evening").getAsJsonArray("promised").size());
    }

    @Test
    void whatTwoShareIsThereOnceAndNotLentBetweenThem() {
        book("both.shelf", "shelf of Ombra, Brack\n3 Tread\n");
        List<String> lines = tuesday();
        assertEquals("Tuesday of round 1: 1 piece is short, nobody need lend anything.", lines.get(0));
        assertTrue(lines.stream().anyMatch(line -> line.contains("is 3: 3 Tread wagon. Short by 1.")), lines.toString());
        book("both.shelf", "shelf of Ombra, Brack\n3 Tread\n1 Hull\n");
        assertEquals("Tuesday of round 1: all 2 lists can be played, nobody need lend anything.", tuesday().get(0));
        book("both.shelf", "shelf of Ombra, Quill\n3 Tread\n");
        book("brack.shelf", "shelf of Brack\n1 Tread\n");
        assertTrue(tuesday().contains("  Ombra lends 1 Tread wagon to Brack."), tuesday().toString());
        book("both.shelf", "shelf of Quill, Fenn\n3 Tread\n");
        Folders.retype(folder.resolve("season.campaign"), "player Quill", "player Quill\nplayer Fenn");
        book("ombra.shelf", "shelf of Ombra\n2 Tread\n");
        assertTrue(tuesday().contains("  Fenn and Quill lend 1 Tread wagon to Brack."), tuesday().toString());
    }

    /** Ombra's two cranks stand for treads only if none of them is a crank at the table; so Quill must lend. */
    @Test
    void oneMeaningIsKeptAtEachTable() {
        book("pond.rules", Folders.read(folder.resolve("pond.rules")) + LETS);
        book("ombra.list", "list by Ombra round 1\nTreads of 2\nCranks of 1\n");
        book("ombra.shelf", "shelf of Ombra\n3 Crank\n");
        book("brack.shelf", "shelf of Brack\n2 Tread\n");
        book("quill.shelf", "shelf of Quill\n2 Tread\n");
        assertTrue(tuesday().get(0).endsWith("all 2 lists can be played, nobody need lend anything."), tuesday().toString());
        book("pond.rules", Folders.read(folder.resolve("pond.rules")) + "  . one table one meaning\n");
        assertEquals("  Quill lends 2 Tread wagon to Ombra.", tuesday().get(1));
        // With one tread wagon less Brack lends his, and has two crank cars for them: he has none that stand for themselves.
        book("quill.shelf", "shelf of Quill\n1 Tread\n");
        assertEquals(List.of("  Brack lends 2 Tread wagon to Ombra.", "  Ombra lends 2 Crank car to Brack."),
                tuesday().subList(1, 3));
        book("brack.list", "list by Brack round 1\nTreads of 2\nCranks of 1\n");
        book("brack.shelf", "shelf of Brack\n2 Tread\n1 Crank\n");
        List<String> lines = tuesday();
        assertTrue(lines.get(0).contains("1 piece is short"), lines.toString());
        assertTrue(lines.stream().anyMatch(line -> line.contains("for what stands for itself at a table stands for nothing else"
                + " there. Short by 1.")), lines.toString());
        assertFalse(lines.contains("The best that was found."), lines.toString());
    }

    /** Two scouts make a tread. Brack works over his own, so that Quill need lend one only. */
    @Test
    void sparePiecesAreWorkedOverForOnesOwnList() {
        book("pond.rules", Folders.read(folder.resolve("pond.rules")) + "likeness Club\n  . turns 2 Scout into Tread\n");
        book("ombra.shelf", "shelf of Ombra\n2 Tread\n4 Scout\n");
        book("brack.shelf", "shelf of Brack\n3 Scout\n");
        book("quill.shelf", "shelf of Quill\n1 Tread\n");
        List<String> lines = tuesday();
        assertEquals(List.of("Tuesday of round 1: all 2 lists can be played, one lends.", "  Quill lends 1 Tread wagon to Brack."),
                lines.subList(0, 2));
        book("quill.shelf", "shelf of Quill\n1 Scout\n");
        // Ombra can spare one of her tread wagons if she works over two scouts for herself.
        assertEquals(List.of("Tuesday of round 1: all 2 lists can be played, one lends.", "  Ombra lends 1 Tread wagon to Brack."),
                tuesday().subList(0, 2));
        book("ombra.shelf", "shelf of Ombra\n2 Tread\n1 Scout\n");
        lines = tuesday();
        assertTrue(lines.get(0).contains("1 piece is short"), lines.toString());
        assertFalse(lines.contains("The best that was found."), lines.toString());
    }
}
