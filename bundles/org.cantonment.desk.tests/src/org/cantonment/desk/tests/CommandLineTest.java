package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The command line answers, and nothing but the answer goes where the answer goes. */
class CommandLineTest {
    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        SmallWar.into(folder);
    }

    @Test
    void aBreachIsOneLineAndOne() {
        Shell shell = Shell.in(folder, "check", ".");
        assertEquals(1, shell.code());
        assertEquals(1, shell.lines().size());
        assertTrue(shell.out().startsWith("lists/brack-2.list:4:7: breach limit.at-most: "), shell.out());
        assertEquals("9 files: 1 breach, 0 cautions, 0 notes.", last(shell.err()));
    }

    @Test
    void withoutABreachThereIsNothingToSayAndZero() {
        Shell shell = Shell.in(folder, "check", "lists/ombra-2.list", "books");
        assertEquals(0, shell.code());
        assertEquals("", shell.out());
    }

    @Test
    void aFileIsCheckedInTheLightOfItsFolderAndAlone() {
        Shell shell = Shell.in(folder.resolve("lists"), "check", "brack-2.list");
        assertEquals(1, shell.code());
        assertTrue(shell.out().startsWith("brack-2.list:4:7: "), shell.out());
    }

    @Test
    void twoRunsAreTheSameToTheByte() throws IOException {
        spoil();
        assertEquals(Shell.in(folder, "check", ".").out(), Shell.in(folder, "check", ".").out());
        assertEquals(Shell.in(folder, "check", "--json", ".").out(), Shell.in(folder, "check", ".", "--json").out());
        assertEquals(Shell.in(folder, "roundup", ".").out(), Shell.in(folder, "roundup", ".").out());
    }

    @Test
    void findingsStandByFileLineAndColumn() throws IOException {
        spoil();
        List<String> places = new ArrayList<>();
        for (String line : Shell.in(folder, "check", ".").lines()) {
            String[] parts = line.split(":");
            places.add(String.format("%s:%05d:%05d", parts[0], Integer.parseInt(parts[1]), Integer.parseInt(parts[2])));
        }
        assertTrue(places.size() > 5, places::toString);
        assertEquals(places.stream().sorted().toList(), places);
    }

    @Test
    void theJsonIsAsItsSchemaSays() throws IOException {
        spoil();
        Shell shell = Shell.in(folder, "check", "--json", ".");
        JsonObject answer = JsonParser.parseString(shell.out()).getAsJsonObject();
        JsonSchema schema = new JsonSchema(JsonParser.parseString(
                Files.readString(Project.file("docs/json/check.schema.json"))).getAsJsonObject());
        assertEquals(List.of(), schema.check(answer));
        assertEquals(1, shell.code());
        assertEquals(Shell.in(folder, "check", ".").lines().size(), answer.getAsJsonArray("findings").size());
        assertEquals(9, answer.getAsJsonObject("summary").get("files").getAsInt());
        answer.remove("format");
        answer.getAsJsonObject("summary").addProperty("files", -1);
        assertEquals(2, schema.check(answer).size(), "the schema is held against something that it must refuse");
    }

    @Test
    void aWordThatIsNoCommandIsTwoAndTheNearestIsNamed() {
        Shell shell = Shell.in(folder, "chek", ".");
        assertEquals(2, shell.code());
        assertEquals("", shell.out());
        assertEquals("cantonment: There is no command 'chek'. Did you mean 'check'? Try 'cantonment --help'.",
                shell.err().strip());
    }

    @Test
    void anOptionThatIsNoneIsTwo() {
        assertRefused("'cantonment check' has no option '--jsn'. Did you mean '--json'?", "check", "--jsn", ".");
    }

    @Test
    void aMissingWordIsTwo() {
        assertRefused("'cantonment check' needs a PATH.", "check");
        assertRefused("'cantonment roundup' needs a FOLDER.", "roundup");
        assertRefused("'cantonment roundup' needs a value behind --on.", "roundup", ".", "--on");
        assertRefused("Say what is to be done", new String[0]);
    }

    @Test
    void onePlaceTooManyIsTwo() {
        assertRefused("so 'books' is one too many", "roundup", ".", "books");
    }

    @Test
    void aFileThatIsNotThereIsTwoAndTheNearestIsNamed() {
        assertRefused("There is no file or folder 'lists/ombra2.list'. Did you mean 'lists/ombra-2.list'?", "check",
                "lists/ombra2.list");
    }

    @Test
    void aFileThatIsNoBookIsTwo() throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "milk");
        assertRefused("'notes.txt' is no book", "check", "notes.txt");
        assertRefused("'books' is a folder, and a list is asked for", "points", "books");
        assertRefused("'heron.campaign' is a file, and a folder is asked for", "roundup", "heron.campaign");
    }

    @Test
    void aDayThatIsNoneIsTwo() {
        assertRefused("'2031-02-30' is no day", "roundup", ".", "--on", "2031-02-30");
    }

    @Test
    void aFolderWithoutACampaignHasNoRoundUp() {
        assertRefused("There is no campaign in 'books'", "roundup", "books");
    }

    @Test
    void aFolderWithoutBooksIsTwo() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        assertRefused("There are no books in 'empty'", "check", "empty");
    }

    @Test
    void everyCommandSaysHowItIsUsed() {
        for (String[] call : new String[][] {{"--help"}, {"check", "--help"}, {"points", "--help"},
                {"format", "--help"}, {"roundup", "--help"}}) {
            Shell shell = Shell.in(folder, call);
            assertEquals(0, shell.code());
            assertTrue(shell.out().startsWith("Usage: cantonment"), shell.out());
            assertTrue(shell.lines().stream().allMatch(line -> line.length() <= 80), shell.out());
        }
        assertTrue(Shell.in(folder, "--help").out().contains("roundup"));
    }

    @Test
    void theVersionIsTheBundles() throws IOException {
        Shell shell = Shell.in(folder, "--version");
        String manifest = Files.readString(Project.file("bundles/org.cantonment.desk/META-INF/MANIFEST.MF"));
        String version = manifest.replaceAll("(?s).*Bundle-Version: ([0-9.]+)\\.qualifier.*", "$1");
        assertEquals("Cantonment " + version + "\n", shell.out());
        assertEquals(0, shell.code());
    }

    @Test
    void pointsOpenIntoTheirParts() {
        Shell shell = Shell.in(folder, "points", "lists/ombra-2.list");
        assertEquals(0, shell.code());
        // Staff 10, tread troop of five 40 with two guns for 4 and a mast for 3, crank troop 20, bicycle post 8.
        assertEquals("lists/ombra-2.list: 85 points of 100", shell.lines().get(0));
        assertTrue(shell.lines().contains("     47  Tread troop"), shell.out());
        assertTrue(shell.lines().contains("               4  2 Long guns"), shell.out());
        int sum = shell.lines().stream().skip(1).filter(line -> line.matches(" {0,6}\\d+  .*"))
                .mapToInt(line -> Integer.parseInt(line.substring(0, 7).strip())).sum();
        assertEquals(85, sum);
    }

    @Test
    void formattingChangesTheFileOnceAndKeepsItsLineEnds() throws IOException {
        Path file = folder.resolve("lists/dream.list");
        Files.writeString(file, SmallWar.LIST_FREE.replace("  . Staff", ".   Staff ").replace("\n", "\r\n"));
        Shell would = Shell.in(folder, "format", "--check", "lists");
        assertEquals(1, would.code());
        assertEquals("lists/dream.list\n", would.out());
        assertTrue(Files.readString(file).contains(".   Staff "), "--check changes nothing");
        assertEquals(0, Shell.in(folder, "format", "lists").code());
        assertEquals(SmallWar.LIST_FREE.replace("\n", "\r\n"), Files.readString(file));
        Shell again = Shell.in(folder, "format", "--check", ".");
        assertEquals("", again.out());
        assertEquals(0, again.code());
    }

    @Test
    void namesCannotSteerTheTerminal() throws IOException {
        Files.writeString(folder.resolve("lists/dream.list"),
                SmallWar.LIST_FREE + "note \"x\"\nStaff\u001B[31m\u202E \"\u05D3\u05D5\u05E8\u05D4\"\nUnknown\u202Ename\n");
        String out = Shell.in(folder, "check", "lists/dream.list").out();
        assertFalse(out.isEmpty());
        assertTrue(out.codePoints().noneMatch(c -> c == 0x1B || c == 0x202E), out);
    }

    private void spoil() throws IOException {
        Files.writeString(folder.resolve("books/lake.rules"),
                SmallWar.RULES.replace("for 24 points", "for points").replace("kind Scouting", "kin Scouting"));
        Files.writeString(folder.resolve("week-2.week"), SmallWar.WEEK + "Nobody beat Brack\nNib beat\n");
        Files.writeString(folder.resolve("lists/dream.list"), SmallWar.LIST_FREE + "  . Staf\n  . Staff,\n");
    }

    private void assertRefused(String why, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.err());
        assertEquals("", shell.out());
        assertTrue(shell.err().contains(why), shell.err());
        assertEquals(1, shell.err().lines().count(), shell.err());
    }

    private static String last(String text) {
        List<String> lines = text.lines().toList();
        return lines.get(lines.size() - 1);
    }
}
