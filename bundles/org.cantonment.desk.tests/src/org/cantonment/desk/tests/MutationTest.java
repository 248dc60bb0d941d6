package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.FindingCodes;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.files.FolderScan;
import org.cantonment.desk.judging.Judging;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is done to a book, the desk has an answer: findings inside the file, with codes that are documented, and no
 * damage beyond the lines that were touched and those that belong to them.
 */
class MutationTest {
    private static final long SEED = 20310303L;

    @TempDir
    Path folder;

    @Test
    void everySpoiltBookOfTheSmallWarGetsAnAnswer() {
        SmallWar.into(folder);
        spoil(SmallWar.files(), 2_500);
    }

    @Test
    void everySpoiltBookOfTheExampleGetsAnAnswer() throws IOException {
        Path example = Project.file("examples/lake-war");
        Map<String, String> files = new TreeMap<>();
        for (Path book : FolderScan.of(example).books()) {
            String name = example.relativize(book).toString();
            files.put(name, Files.readString(book));
            Files.createDirectories(folder.resolve(name).getParent());
            Files.copy(book, folder.resolve(name));
        }
        assertTrue(files.size() > 10, "the example is there");
        spoil(files, 1_000);
    }

    private void spoil(Map<String, String> files, int cases) {
        CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        Set<String> before = form(desk.snapshot().findings());
        Mutator mutator = new Mutator(files, SEED);
        for (int i = 0; i < cases; i++) {
            Mutation mutation = mutator.next();
            Path file = folder.resolve(mutation.file());
            String name = "case " + i + ", " + mutation.what();
            try {
                DeskSnapshot spoilt = desk.update(file, mutation.text(), CancelToken.NEVER);
                inside(spoilt, desk, name);
                nearTheDamage(spoilt.findings(file), mutation, name);
                DeskSnapshot mended = desk.update(file, files.get(mutation.file()), CancelToken.NEVER);
                assertEquals(before, form(mended.findings()), "mended again after " + name);
            } catch (RuntimeException | StackOverflowError e) {
                fail(name + " brought down the desk", e);
            }
        }
    }

    private void inside(DeskSnapshot snapshot, CampaignDesk desk, String name) {
        Map<Path, String[]> lines = new HashMap<>();
        for (LocatedFinding finding : snapshot.findings()) {
            String text = desk.text(finding.file()).orElseThrow();
            String where = name + ": " + finding;
            String[] split = lines.computeIfAbsent(finding.file(), f -> text.split("\r\n|\n|\r", -1));
            assertTrue(finding.offset() >= 0 && finding.length() >= 0
                    && finding.offset() + finding.length() <= text.length(), where);
            assertTrue(finding.line() >= 1 && finding.line() <= split.length, where);
            assertTrue(finding.column() >= 1 && finding.column() <= split[finding.line() - 1].length() + 1, where);
            assertNotEquals(Judging.FAILED, finding.code(), where);
            assertTrue(FindingCodes.known(finding.code()), "No such code is documented; " + where);
            assertTrue(!finding.message().isBlank() && finding.message().indexOf("null") < 0, where);
        }
    }

    // What cannot be read is told where the damage is, or on lines that belong to a damaged line or to one that is gone.
    private static void nearTheDamage(List<LocatedFinding> findings, Mutation mutation, String name) {
        if (mutation.touched().nextSetBit(0) <= head(mutation.text())) {
            return; // another first line makes another book of it
        }
        BitSet near = near(mutation);
        for (LocatedFinding finding : findings) {
            assertTrue(!finding.code().startsWith("form.") || near.get(finding.line()), name + ": " + finding);
        }
    }

    // The line that says what the book is: the first that is not empty and no remark.
    private static int head(String text) {
        String[] lines = text.split("\r\n|\n|\r", -1);
        int line = 1;
        while (line < lines.length && (lines[line - 1].isBlank() || lines[line - 1].strip().startsWith("#"))) {
            line++;
        }
        return line;
    }

    /** The touched lines, and the lines with dots that follow them, whatever remarks and empty lines stand between. */
    static BitSet near(Mutation mutation) {
        String[] lines = mutation.text().split("\r\n|\n|\r", -1);
        BitSet near = new BitSet();
        boolean within = false;
        for (int line = 1; line <= lines.length; line++) {
            String text = lines[line - 1].strip();
            boolean transparent = text.isEmpty() || text.startsWith("#") || text.startsWith(".");
            within = mutation.touched().get(line) || within && transparent;
            near.set(line, within);
        }
        return near;
    }

    private static Set<String> form(List<LocatedFinding> findings) {
        Set<String> all = new HashSet<>();
        findings.forEach(f -> all.add(f.file() + ":" + f.line() + ":" + f.column() + " " + f.code() + " " + f.message()));
        return all;
    }
}
