package org.cantonment.desk.tests.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule that asks for the shelf is judged by what the player's shelves say, and anew when they say something else. */
class ShelfTest {

    private static final String SHELF = """
            shelf of Ombra
            4 Gun-Wagon, 2 painted
            3 Carrier
            Case
              . built 2 Carrier painted, Officer
              . lost Officer
            """;

    @TempDir
    Path folder;

    private CampaignDesk desk;

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private List<String> judged(String rule) throws IOException {
        write("quay.range", Pond.BOOK + "part Frame\n  . builds 3 Carrier\nbox Case\n  . 2 Frame, 2 Officer\n");
        write("pond.rules", Pond.RULES + "limit Test \"Test\"\n" + Pond.dotted(rule));
        write("season.campaign", "campaign Season\nplays Pond\nplayer Ombra\nplayer Brack\nround 1\n");
        write("a.list", "list by Ombra round 1\nSquad\n  . Tread of 3\n");
        write("b.list", "list by Brack round 1\nSquad\n  . Tread of 3\n");
        write("o.shelf", SHELF);
        desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        return said("a.list");
    }

    private List<String> said(String file) {
        return desk.snapshot().findings(folder.resolve(file)).stream().map(LocatedFinding::message)
                .filter(message -> message.startsWith("Test")).toList();
    }

    @Test
    void countsWhatStandsThereAndWhatWasBuilt() throws IOException {
        assertEquals(List.of(), judged("always pieces of Wagons owned is 9; always pieces of Gun-Wagons owned is 4;"
                + "always pieces of Wagons painted is 4; always pieces of Officer owned is 1"));
        assertEquals(4, said("b.list").size());
        assertEquals("Test (The Pond Book) was not judged: the player's shelf is not known.", said("b.list").get(0));
    }

    /** Ombra gives two carriers away and buys a case with two officers before the round; what is lent is owned. */
    @Test
    void countsWhatTheWeeksDidUntilTheListIsPlayed() throws IOException {
        judged("always pieces of Carrier owned is 3; always pieces of Officer owned is 3; always pieces of Gun-Wagon owned is 4");
        write("season.campaign", "campaign Season from 2031-03-03\nplays Pond\nplayer Ombra\nplayer Brack\nround 1\n"
                + "  . play from 2031-03-17 to 2031-03-23\n");
        write("week-1.week", "week 1 of Season\nOmbra gave 2 Carrier to Brack\nOmbra bought Case\n"
                + "Ombra lent 2 Gun-Wagon to Brack\n");
        write("week-3.week", "week 3 of Season\nOmbra gave 3 Carrier to Brack on 2031-03-20\n");
        desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of(), said("a.list"));
        desk = CampaignDesk.open(DeskScope.only(folder, Set.of(folder.resolve("a.list"))), CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of(), said("a.list"));
        write("week-1.week", "week 1 of Season\n");
        desk = CampaignDesk.open(DeskScope.only(folder, Set.of(folder.resolve("a.list"))), CancelToken.NEVER, Progress.SILENT);
        assertEquals(2, said("a.list").size());
    }

    @Test
    void isJudgedAnewWhenTheShelfChanges() throws IOException {
        assertEquals(List.of(), judged("always pieces of Carrier owned is at least pieces of Officer times 5"));
        desk.update(folder.resolve("o.shelf"), SHELF.replace("3 Carrier", "2 Carrier"), CancelToken.NEVER);
        assertEquals(List.of("Test (The Pond Book): pieces of Carrier owned is 4 and should be at least 5 (pieces of Officer times 5); "
                + "pieces of Officer is 1."), said("a.list"));
        desk.update(folder.resolve("o.shelf"), SHELF.replace("3 Carrier", "unknown Carrier"), CancelToken.NEVER);
        assertEquals(List.of("Test (The Pond Book) was not judged: the player's shelf is not known."), said("a.list"));
    }
}
