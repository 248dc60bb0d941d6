package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Books that make no sense in one way or another get a finding at its place, never a fault. */
class OddBooksTest {
    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        SmallWar.into(folder);
    }

    @Test
    void aFormationInsideItself() throws IOException {
        put("odd.rules", "rules Odd\nformation A\n  . billet B 1 of C\nformation C\n  . billet D 1 of A\n");
        put("odd.list", "list Odd-List under Odd\nA\n  . C\n    .. A\n");
        assertFound("odd.rules", "name.circle");
    }

    @Test
    void aRuleSetOverItself() throws IOException {
        put("a.rules", "rules A over B\nunit U\n  . strength 1 for 5 points\n");
        put("b.rules", "rules B over A\n");
        put("a.list", "list L under A\nU\n");
        assertFound("a.rules", "name.circle");
    }

    @Test
    void aFamilyInItself() throws IOException {
        put("a.range", "range A in EUR\nfamily F in G\nfamily G in F\nfamily H in H\n");
        assertFound("a.range", "name.circle");
    }

    @Test
    void anEraAfterItself() throws IOException {
        put("a.rules", "rules A\nera E after F\nera F after E\nkind K in K\n");
        assertFound("a.rules", "name.circle");
    }

    @Test
    void theSameNameTwice() throws IOException {
        put("a.rules", "rules A\nunit U\n  . strength 1 for 5 points\nunit U\n  . strength 1 for 6 points\n");
        assertFound("a.rules", "name.twice");
    }

    @Test
    void absurdNumbers() throws IOException {
        put("a.rules", "rules A\nunit U\n  . strength 99999999999999999999 for 2147483648 points\n  . strength -1 for 5 points\n"
                + "  . strength 0 for 1000001 points\nlimit L\n  . at most 101 percent of points used on U\n");
        put("a.list", "list L under A to -5 points\n2147483647 U of 2147483647\n-1 U\n99999999999 U\n");
        // One finding a line: strength and points of the third line are both too large.
        assertTrue(found("a.rules", "number.range") >= 4, () -> shortened(check().out()));
        assertTrue(found("a.list", "number.range") >= 3, () -> shortened(check().out()));
    }

    @Test
    void aMillionTimesAMillion() throws IOException {
        put("a.rules", "rules A\nunit U\n  . strength 1 for 1000000 points\nformation F\n  . billet B 0 to 1000000 of U, F\n");
        put("a.list", "list L under A to 100 points\n1000000 F\n  . 1000000 F\n    .. 1000000 F\n      ... 1000000 U\n");
        assertTrue(found("a.list", "count.too-large") + found("a.list", "points.over") > 0, () -> shortened(check().out()));
    }

    @Test
    void daysThatNoCalendarHas() throws IOException {
        put("week-3.week", "week 3 of Heron-Season\nOmbra beat Brack on 2031-02-30\nNib beat Quill on 2031-2-3\n");
        assertFound("week-3.week", "date.none");
        assertFound("week-3.week", "date.form");
    }

    @Test
    void aPriceInNoCurrency() throws IOException {
        put("a.range", "range A\npiece P\nbox B\n  . P\n  . price 5.00\n  . price 5.00 ZZZ\n  . price 5.005 EUR\n");
        assertFound("a.range", "money.currency");
        assertFound("a.range", "money.amount");
    }

    @Test
    void namesInManyScripts() throws IOException {
        put("a.campaign", "campaign Night\nplayer \u05D3\u05D5\u05E8\u05D4 \"\u05D3\u05D5\u05E8\u05D4\"\n"
                + "player \u041E\u043B\u044C\u0433\u0430\nplayer \u6C34\u9E5F \"\u6C34\u9E5F\u5148\u751F\"\n"
                + "\u05D3\u05D5\u05E8\u05D4 beat \u041E\u043B\u044C\u0433\u0430\n\u6C34\u9E5F beat \u05D3\u05D5\u05E8\u05D4\n"
                + "player O\u043Bga\n");
        assertFound("a.campaign", "name.scripts");
        Shell roundup = Shell.in(folder, "roundup", ".");
        assertTrue(roundup.out().contains("\u05D3\u05D5\u05E8\u05D4"), roundup.out());
        assertEquals(1, Shell.in(folder, "check", "a.campaign").lines().size(), () -> shortened(check().out()));
    }

    @Test
    void anEmptyFile() throws IOException {
        put("a.list", "");
        put("b.rules", "\n\n# nothing\n");
        assertFound("a.list", "form.empty");
        assertFound("b.rules", "form.empty");
        assertEquals(1, check().code());
    }

    @Test
    void aFileThatIsNoText() throws IOException {
        byte[] bytes = new byte[4096];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 37 + (i >> 3));
        }
        Files.write(folder.resolve("a.list"), bytes);
        assertFound("a.list", "form.bytes");
    }

    @Test
    void oneLineOfTenMillionLetters() throws IOException {
        put("a.list", "list L under Lake-Book in Dyke-War to 100 points\nStaff \"" + "x".repeat(10 << 20) + "\"\nStaff\n");
        List<String> lines = Shell.in(folder, "check", "a.list").lines();
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("a.list:2:") && line.contains(" form.")),
                () -> shortened(lines.toString()));
        assertTrue(lines.stream().allMatch(line -> line.length() < 700), "no finding repeats the line");
    }

    @Test
    void aFolderNamedLikeABook() throws IOException {
        Files.createDirectory(folder.resolve("inner.list"));
        put("inner.list/a.list", "list L under Lake-Book in Dyke-War to 100 points\nStaff\n");
        assertTrue(check().out().contains("inner.list/a.list"), () -> shortened(check().out()));
        assertEquals(2, Shell.in(folder, "points", "inner.list").code());
    }

    @Test
    void aFileThatMayNotBeRead() throws IOException {
        assumeFalse("root".equals(System.getProperty("user.name")), "root may read everything");
        Path file = folder.resolve("lists/dream.list");
        assumeTrue(file.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assertFound("lists/dream.list", "file.unread");
        assertEquals(2, check().code());
    }

    @Test
    void aLinkToNothing() throws IOException {
        try {
            Files.createSymbolicLink(folder.resolve("gone.list"), folder.resolve("nowhere"));
        } catch (UnsupportedOperationException e) {
            assumeTrue(false, "no links on this system");
        }
        assertFound("gone.list", "file.unread");
        assertEquals(2, check().code());
    }

    @Test
    void aThousandUnknownNames() throws IOException {
        put("a.list", "list L under Lake-Book in Dyke-War to 100 points\n" + java.util.stream.IntStream.range(0, 1000)
                .mapToObj(i -> "Unknown-" + i).collect(Collectors.joining("\n")) + "\n");
        assertEquals(1000, found("a.list", "name.unknown"));
    }

    private void put(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private Shell check() {
        return Shell.in(folder, "check", ".");
    }

    private long found(String file, String code) {
        return check().lines().stream().filter(line -> line.startsWith(file + ":") && line.contains(" " + code + ": "))
                .count();
    }

    private static String shortened(String text) {
        return text.substring(0, Math.min(2000, text.length()));
    }

    private void assertFound(String file, String code) {
        Shell shell = check();
        assertTrue(shell.lines().stream().anyMatch(line -> line.startsWith(file + ":") && line.contains(" " + code + ": ")),
                () -> shortened("No " + code + " in " + file + ":\n" + shell.out() + shell.err()));
    }
}
