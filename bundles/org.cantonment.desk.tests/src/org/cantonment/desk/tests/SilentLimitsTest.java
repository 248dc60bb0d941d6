package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A limit that never once spoke in a season is a note at its line; and a finding names the layer that says it. */
class SilentLimitsTest {
    private static final String RULES = """
            rules Pond
            unit Line
              . strength 1 for 5 points
            unit Gun
              . strength 1 for 8 points
            limit Few-Guns "Few guns"
              . at most 2 of Gun
            limit Many-Lines "Many lines"
              . at least 1 of Line
            limit Great-Guns "Great guns"
              . at most 0 of Gun from round 9
            """;
    private static final String HOUSE = """
            rules House "The back room" over Pond
            tighten Few-Guns
              . at most 1 of Gun
            limit No-Crowds "No crowds"
              . at most 9 of Line
            forbid Gun in round 3
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        Folders.write(folder.resolve("pond.rules"), RULES);
        Folders.write(folder.resolve("house.rules"), HOUSE);
        Folders.write(folder.resolve("season.campaign"), """
                campaign Season "A season"
                plays Pond, House
                player Nib
                player Quill
                round 1
                round 2
                round 3
                round 4
                """);
        for (int round = 1; round <= 3; round++) {
            Folders.write(folder.resolve("nib-" + round + ".list"), "list by Nib round " + round + "\n2 Line\nGun\n");
        }
    }

    private CampaignDesk open() {
        return CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
    }

    private List<String> silent(CampaignDesk desk) {
        return desk.snapshot().findings().stream().filter(finding -> finding.code().equals("limit.silent"))
                .map(finding -> finding.file().getFileName() + ":" + finding.line() + ": " + finding.message()).toList();
    }

    @Test
    void eachBookThatSaysSuchLimitsHasOneNote() {
        assertEquals(List.of(
                "house.rules:2: Few guns: in the 3 lists of A season this limit never had anything to say. Nor did others"
                        + " of this book: No crowds.",
                "pond.rules:8: Many lines: in the 3 lists of A season this limit never had anything to say."),
                silent(open()));
    }

    @Test
    void whoeverBreaksOneWakesItAndTheLayerThatTightensIt() {
        CampaignDesk desk = open();
        desk.update(folder.resolve("nib-1.list"), "list by Nib round 1\n2 Line\n2 Gun\n", CancelToken.NEVER);
        assertEquals(List.of("house.rules:4: No crowds: in the 3 lists of A season this limit never had anything to say.",
                "pond.rules:8: Many lines: in the 3 lists of A season this limit never had anything to say."), silent(desk));
        desk.update(folder.resolve("season.campaign"), desk.text(folder.resolve("season.campaign")).orElseThrow()
                + "excuse Nib from Few-Guns by Quill \"so\"\n", CancelToken.NEVER);
        assertEquals(2, silent(desk).size()); // what is excused was said all the same
    }

    @Test
    void halfASeasonIsNone() {
        Folders.write(folder.resolve("season.campaign"), Folders.read(folder.resolve("season.campaign"))
                + "round 5\nround 6\n");
        assertEquals(List.of(), silent(open()));
    }

    @Test
    void twoListsAreNoSeasonEither() {
        Folders.write(folder.resolve("season.campaign"), """
                campaign Season
                plays Pond
                player Nib
                round 1
                round 2
                """);
        assertEquals(List.of(), silent(open()));
    }

    @Test
    void aFindingNamesTheLayerThatSaysIt() {
        LocatedFinding finding = open().snapshot().findings(folder.resolve("nib-3.list")).get(0);
        assertEquals("unit.forbidden", finding.code());
        assertTrue(finding.message().contains("The back room"), finding.message());
        assertEquals("The back room", finding.rule().orElseThrow().layer().orElseThrow());
    }
}
