package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.BadLocationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * After whatever was typed, the open book shows what a desk of its own says that reads the same text from
 * the disk in one go.
 */
class SecondOpinionTest {

    private static final long SEED = 20310418;
    private static final String[] PIECES = { "\n", " ", ".", "..", "Tread-Troop", "of 3", "2 ", "\"", "#", ",",
            "support\n", "Nobody", "  . Staff\n", "x", "round 4" };

    @TempDir
    Path folder;

    private Campaign campaign;

    @BeforeEach
    void writeAnew() {
        campaign = Campaign.anew();
    }

    @Test
    void fastTyping() throws IOException {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scouts");
        list.type("\nTread-Troop of 3\nNobody\nCrank-Troop of 4");
        compare(list, "fast typing");
        assertEquals(list.model().version(), list.model().snapshot().version());
        assertEquals(list.text(), list.model().snapshot().text());
    }

    @Test
    void editsAtRandom() throws IOException, BadLocationException {
        Random random = new Random(SEED);
        OpenBook list = campaign.open("ombra-4.list");
        for (int round = 1; round <= 12; round++) {
            for (int i = 0; i < 8; i++) {
                edit(list, random);
            }
            compare(list, "seed " + SEED + ", round " + round);
        }
    }

    private static void edit(OpenBook list, Random random) throws BadLocationException {
        int length = list.editor().document().getLength();
        int offset = random.nextInt(length + 1);
        int removed = Math.min(random.nextInt(4) == 0 ? random.nextInt(20) : 0, length - offset);
        list.editor().document().replace(offset, removed, PIECES[random.nextInt(PIECES.length)]);
    }

    private void compare(OpenBook list, String when) throws IOException {
        Screen.idle();
        Files.writeString(folder.resolve("lake.rules"), Campaign.RULES);
        Files.writeString(folder.resolve("heron.campaign"), Campaign.SEASON);
        Path file = folder.resolve("ombra-4.list");
        Files.writeString(file, list.text());
        CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        List<String> expected = desk.snapshot().findings(file).stream()
                .map(finding -> finding.offset() + " " + finding.severity() + " " + finding.message()).sorted()
                .toList();
        List<String> shown = list.marks().stream().map(
                mark -> mark.offset() + " " + mark.severity().toUpperCase(Locale.ROOT) + " " + mark.message())
                .sorted().toList();
        assertEquals(String.join("\n", expected), String.join("\n", shown), when + "\n" + list.text());
    }
}
