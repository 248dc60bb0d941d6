package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.cli.Main;
import org.cantonment.desk.cli.Terminal;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.testkit.Project;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The handbooks say nothing that was not tried: their snippets stand in files, their calls answer what they print, and the
 * examples give just the findings that their remarks announce.
 */
class HandbooksTest {
    private static final Pattern BLOCK = Pattern.compile("^```(.*)\n((?:.*\n)*?)```$", Pattern.MULTILINE);
    private static final Pattern REMARK = Pattern.compile("# (wrong|caution|note): .*\\[(.+)]");

    /** A handbook; it has at least so many snippets and calls. */
    private enum Handbook {
        RULE_AUTHORS("rule-authors", 12, 2), FIRST_PURCHASE("first-purchase", 1, 8);

        private final String document;
        private final int snippets;
        private final int calls;

        Handbook(String document, int snippets, int calls) {
            this.document = document;
            this.snippets = snippets;
            this.calls = calls;
        }

        private List<Block> blocks() throws IOException {
            List<Block> blocks = new ArrayList<>();
            Matcher matcher = BLOCK.matcher(Files.readString(Project.file("docs/" + document + ".md")));
            while (matcher.find()) {
                blocks.add(new Block(matcher.group(1), matcher.group(2)));
            }
            return blocks;
        }
    }

    /** A block of the handbook: what stands behind its three ticks, and its text. */
    private record Block(String about, String text) {
    }

    @ParameterizedTest
    @EnumSource
    void everySnippetStandsInTheFileThatItNames(Handbook handbook) throws IOException {
        int snippets = 0;
        for (Block block : handbook.blocks()) {
            String[] about = block.about().split(" ");
            if (!about[0].equals("console")) {
                assertEquals(2, about.length, "A block that names no file: " + block.about());
                String file = "\n" + Files.readString(Project.file(about[1]));
                assertTrue(file.contains("\n" + block.text()), about[1] + " does not have:\n" + block.text());
                snippets++;
            }
        }
        assertTrue(snippets >= handbook.snippets, "only " + snippets + " snippets");
    }

    @ParameterizedTest
    @EnumSource
    void everyCallAnswersWhatIsPrinted(Handbook handbook) throws IOException {
        int calls = 0;
        for (Block block : handbook.blocks()) {
            if (block.about().equals("console")) {
                String[] parts = block.text().split("\n", 2);
                assertTrue(parts[0].startsWith("$ releng/cantonment "), parts[0]);
                assertEquals(parts[1], answer(parts[0].substring("$ releng/cantonment ".length()).split(" ")), parts[0]);
                calls++;
            }
        }
        assertTrue(calls >= handbook.calls, "only " + calls + " calls");
    }

    @ParameterizedTest
    @ValueSource(strings = {"rule-handbook", "first-purchase", "lake-war"})
    void anExampleGivesWhatItsRemarksSay(String folder) {
        CampaignDesk desk = CampaignDesk.open(Project.file("examples/" + folder), CancelToken.NEVER, Progress.SILENT);
        List<String> expected = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (Path file : desk.snapshot().files()) {
            Matcher remark = REMARK.matcher(desk.text(file).orElseThrow());
            while (remark.find()) {
                expected.add(file.getFileName() + " " + remark.group(1).replace("wrong", "breach") + " " + remark.group(2));
            }
        }
        for (LocatedFinding finding : desk.snapshot().findings()) {
            found.add(finding.file().getFileName() + " " + finding.severity().name().toLowerCase(Locale.ROOT)
                    + " " + finding.code());
        }
        expected.sort(null);
        found.sort(null);
        assertEquals(expected, found);
    }

    private static String answer(String[] words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, false, StandardCharsets.UTF_8);
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
        Main.run(words, new Terminal(print, nowhere, Project.file("examples").getParent()));
        return out.toString(StandardCharsets.UTF_8);
    }
}
