package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.Oddment;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shelves to tables and back. Quotes, commas, line ends and empty cells as RFC 4180, section 2, has them. */
class ShelfTableTest {
    private static final Id NO_LINE = Id.of("Line");

    @TempDir
    Path folder;

    private void range() {
        Folders.write(folder.resolve("works.range"), """
                range Works in EUR
                piece Gun-Wagon "Gun wagon"
                piece Carrier
                box W-1 "Gun wagon"
                  . Gun-Wagon
                  . code "WK/0001"
                """);
        Folders.write(folder.resolve("season.campaign"), "campaign Season\nplayer Ombra\n");
    }

    private String table(String text) {
        Folders.write(folder.resolve("table.csv"), text);
        return "table.csv";
    }

    private String shelf() {
        return Folders.read(folder.resolve("ombra.shelf"));
    }

    @Test
    void everyShelfOfTheExampleComesBackTheSame() throws IOException {
        Path war = folder.resolve("war");
        try (Stream<Path> files = Files.walk(Project.file("examples/lake-war"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = war.resolve(Project.file("examples/lake-war").relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        List<Shelf> before = shelves(war);
        assertEquals(9, before.size());
        try (Stream<Path> files = Files.list(war.resolve("shelves"))) {
            for (Path file : files.sorted().toList()) {
                Shell out = Shell.in(war, "shelf", "export", file.toString(), "--to", "table.csv");
                assertEquals(0, out.code(), out.err());
                assertEquals(0, Shell.in(war, "shelf", "import", "table.csv", "--to", file.toString(), "--replace").code());
                Files.delete(war.resolve("table.csv"));
            }
        }
        List<Shelf> after = shelves(war);
        for (int i = 0; i < before.size(); i++) {
            assertEquals(before.get(i).holdings().stream().map(ShelfTableTest::bare).toList(),
                    after.get(i).holdings().stream().map(ShelfTableTest::bare).toList());
            assertEquals(before.get(i).oddments().stream().map(ShelfTableTest::bare).toList(),
                    after.get(i).oddments().stream().map(ShelfTableTest::bare).toList());
            assertEquals(before.get(i).owners(), after.get(i).owners());
            assertEquals(before.get(i).notes(), after.get(i).notes());
            assertEquals(before.get(i).wishes().stream().map(ShelfTableTest::bare).toList(),
                    after.get(i).wishes().stream().map(ShelfTableTest::bare).toList());
        }
    }

    private static List<Shelf> shelves(Path folder) {
        DeskSnapshot snapshot = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot();
        return snapshot.meanings().shelves();
    }

    // Ids are places, and those may move.
    private static Holding bare(Holding one) {
        return new Holding(NO_LINE, one.certainty(), one.count(), one.what(), one.states(), one.fixing(), one.paid(),
                one.on(), one.from(), one.printing(),
                one.made().stream().map(made -> new Made(NO_LINE, made.act(), made.things())).toList(), one.notes());
    }

    private static String bare(Wish one) {
        return one.toString().replaceAll("#\\d+", "");
    }

    private static Oddment bare(Oddment one) {
        return new Oddment(NO_LINE, one.count(), one.text(), one.worth());
    }

    @Test
    void columnsAreToldOnceAndKept() {
        range();
        table("Model;How many;Colour\r\nGun wagon;2;\"red; mostly\"\r\nwk/0001;;\r\n");
        Shell first = Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra", "--in", "EUR",
                "--map", "Model=thing", "--map", "How many=count");
        assertEquals(0, first.code(), first.err() + first.out());
        assertEquals("shelf of Ombra in EUR\n# column \"How many\" is count\n# column \"Model\" is thing\n\n2 Gun-Wagon\n"
                + "  . note \"Colour: red; mostly\"\nW-1\n", shelf());
        table("Model,How many,Colour\nCarrier,3,\n");
        assertEquals(2, Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf").code());
        Shell again = Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--replace");
        assertEquals(0, again.code(), again.err());
        assertTrue(shelf().endsWith("\n3 Carrier\n"), shelf());
        assertFalse(shelf().contains("Gun-Wagon"), shelf());
    }

    /** Notes of the whole shelf, semicolons in texts and wishes are in the table, and come back from it into a new shelf. */
    @Test
    void nothingOfAShelfIsMissingFromItsTable() {
        range();
        Folders.write(folder.resolve("season.campaign"), "campaign Season\nplayer Ombra\nround 1\n");
        Folders.write(folder.resolve("pond.rules"), "rules Pond\nunit Tread-Troop\n  . strength 3 for 20 points\n");
        String text = """
                shelf of Ombra in EUR
                  . note "Two cases; one is red"
                  . note "On top"

                2 Gun-Wagon
                  . note "left; right"
                  . note "old"
                oddment "Ruler" worth 4.00 EUR

                wish Spring "More; and better"
                  . likes Tread-Troop
                  . budget 40.00 per round saved
                  . bench 3 hours per week
                  . note "soon; very soon"
                """;
        Folders.write(folder.resolve("ombra.shelf"), text);
        Shell out = Shell.in(folder, "shelf", "export", "ombra.shelf", "--to", "table.csv");
        assertEquals(0, out.code(), out.err());
        assertEquals(0, Shell.in(folder, "shelf", "import", "table.csv", "--to", "new.shelf", "--of", "Ombra", "--in", "EUR").code());
        assertEquals(text.replaceAll("(?m)^\n", ""), Folders.read(folder.resolve("new.shelf")).replaceAll("(?m)^\n", ""));
        assertEquals(0, Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--replace").code());
        assertEquals(text.replaceAll("(?m)^\n", ""), shelf().replaceAll("(?m)^\n", ""));
        table("thing,note,wish\nCarrier,,\n,Late,\n");
        Shell late = Shell.in(folder, "shelf", "import", "table.csv", "--to", "late.shelf", "--of", "Ombra");
        assertEquals(1, late.code());
        assertTrue(late.out().contains("table.csv:3: caution shelf.row: A note of the whole shelf stands above"), late.out());
    }

    @Test
    void whatIsNotUnderstoodIsFoundByItsRowAndKept() {
        range();
        table("thing,count,paid,state\nGunn wagon,2,,\nCarrier,many,,\nCarrier,2,cheap,\nCarrier,2,,shiny\n"
                + "\"Gun\nwagon\",1,2.50 EUR,painted\nCarrier,2,2.505 EUR,\n");
        Shell shell = Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra");
        assertEquals(1, shell.code());
        List<String> lines = shell.lines();
        assertEquals("table.csv:2: caution shelf.row: No range here has 'Gunn wagon'. The nearest is 'Gun wagon'.",
                lines.get(0));
        assertTrue(lines.get(1).startsWith("table.csv:3: caution shelf.row: 'many' is no count"), lines.get(1));
        assertTrue(lines.get(2).startsWith("table.csv:4: caution shelf.row: 'cheap' is no amount"), lines.get(2));
        assertTrue(lines.get(3).startsWith("table.csv:5: caution shelf.row: 'shiny' is no state"), lines.get(3));
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("table.csv:8: caution shelf.row: ")), lines.toString());
        assertTrue(shelf().contains("# row 3 not understood: thing=Carrier; count=many"), shelf());
        assertTrue(shelf().contains("# row 8 not understood: thing=Carrier; count=2; paid=2.505 EUR"), shelf());
        assertEquals(0, Shell.in(folder, "check", "ombra.shelf").code());
    }

    @Test
    void wrongCallsAreAnswered() throws IOException {
        range();
        table("Colour\nred\n");
        assertWrong("No column says what lies on the shelf", "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra");
        assertWrong("maps no column", "shelf", "import", "table.csv", "--to", "ombra.shelf", "--map", "Colour=hue");
        assertWrong("has no column 'Hue'", "shelf", "import", "table.csv", "--to", "ombra.shelf", "--map", "Hue=thing");
        assertWrong("Say where", "shelf", "import", "table.csv");
        assertWrong("is no shelf", "shelf", "import", "table.csv", "--to", "ombra.list");
        table("thing\nCarrier\n");
        assertWrong("Say whose shelf", "shelf", "import", "table.csv", "--to", "ombra.shelf");
        table("");
        assertWrong("Nothing stands in this table", "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra");
        Files.write(folder.resolve("table.csv"), "thing\nTr\u00e9ad\n".getBytes(StandardCharsets.ISO_8859_1));
        assertWrong("UTF-8", "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra");
        assertWrong("imports or exports", "shelf", "turn", "table.csv");
        assertFalse(Files.exists(folder.resolve("ombra.shelf")));
    }

    private void assertWrong(String words, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.out());
        assertTrue(shell.err().contains(words), shell.err());
    }

    @Test
    void aTableAsClubsKeepItIsUnderstood() {
        range();
        table("""
                What;Owned;Painted?;Paid
                Gun wagon;6;4;24,00
                Carrier;~3;no;
                Carrier;2?;yes;
                Carrier;?;;
                Carrier;5;6;
                Carrier;2;maybe;
                """);
        Shell out = Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra", "--in", "EUR",
                "--map", "What=thing", "--map", "Owned=count", "--map", "Painted?=painted", "--map", "Paid=paid");
        assertEquals(1, out.code(), out.err());
        String shelf = shelf();
        assertTrue(shelf.contains("\n6 Gun-Wagon, 4 painted for 24.00\n"), shelf);
        assertTrue(shelf.contains("\nguessed 3 Carrier\nguessed 2 Carrier painted\nunknown Carrier\n"), shelf);
        assertTrue(out.out().contains("table.csv:6: "), out.out());
        assertTrue(out.out().contains("table.csv:7: caution shelf.row: 'maybe' does not say how many are painted"), out.out());
        assertEquals(0, Shell.in(folder, "check", ".").code());
    }

    @Test
    void aCountThatSaysTwoThingsIsARemark() {
        range();
        table("thing,count,certainty,state,painted\nCarrier,~3,known,,\nCarrier,3,,primed,yes\nCarrier,~3,guessed,,\n");
        Shell out = Shell.in(folder, "shelf", "import", "table.csv", "--to", "ombra.shelf", "--of", "Ombra");
        assertEquals(1, out.code(), out.err());
        assertTrue(out.out().contains("table.csv:2: caution shelf.row: '~3' is guessed, and beside it stands 'known'."), out.out());
        assertTrue(out.out().contains("table.csv:3: caution shelf.row: Two columns say how far it is"), out.out());
        assertTrue(shelf().contains("\nguessed 3 Carrier\n"), shelf());
    }
}
