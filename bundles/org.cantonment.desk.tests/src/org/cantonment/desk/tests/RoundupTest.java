package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The week's round-up says where the campaign stands, and nothing that nobody wrote. */
class RoundupTest {
    @TempDir
    Path folder;

    @Test
    void theWholeOfASmallSeason() {
        SmallWar.into(folder);
        Shell shell = Shell.in(folder, "roundup", ".");
        assertEquals(0, shell.code());
        assertEquals("""
                The Heron season: round 2 of 2, The causeway
                Current because all games of round 1 are booked. The Dyke War, 100 points, 120
                points for Nib.
                Booked up to week 2, 2031-03-12.

                Who plays whom
                  Ombra to play           Quill  Tuesday 2031-03-25 19:00, Table 1
                  Brack to play           Nib

                Results so far
                         played  won  drawn  lost  points
                  Ombra       1    1      0     0       3
                  Nib         1    0      1     0       1
                  Quill       1    0      1     0       1
                  Brack       1    0      0     1       0
                  Equal points are not separated here.

                Lists
                  Ombra in, 85 of 100 points, legal
                  Brack in, 90 of 100 points, not legal: The works at Oddbarrow turn out few.…
                  Quill missing
                  Nib   missing

                Due next
                  2031-03-16        last day of play, round 1
                  2031-03-20 20:00  lists in, round 2
                  2031-03-24        play begins, round 2
                  2031-03-30        last day of play, round 2
                """, shell.out());
    }

    @Test
    void twoNamesAndOneResultAreACampaign() throws IOException {
        put("a.campaign", "campaign Tuesday\nplayer Ombra\nplayer Brack\nOmbra beat Brack\n");
        String out = Shell.in(folder, "roundup", ".").out();
        assertTrue(out.startsWith("Tuesday\n"), out);
        assertTrue(out.contains("  Ombra       1    1      0     0\n"), out);
        assertTrue(out.contains("states no scoring"), out);
        assertFalse(out.contains("points\n"), "no scheme is made up: " + out);
    }

    @Test
    void aDayDecidesWhichRoundIsCurrent() {
        SmallWar.into(folder);
        assertTrue(Shell.in(folder, "roundup", ".", "--on", "2031-03-12").lines().get(0).contains("round 1 of 2"));
        List<String> later = Shell.in(folder, "roundup", "--on", "2031-03-26", ".").lines();
        assertTrue(later.get(0).contains("round 2 of 2"));
        assertEquals("  2031-03-30        last day of play, round 2", later.get(later.size() - 1));
    }

    @Test
    void aCorrectionTakesTheResultsPlace() throws IOException {
        SmallWar.into(folder);
        put("week-3.week", "week 3 of Heron-Season\ncorrect week 2 \"Miscounted\"\n  . not Ombra beat Brack 5:2\n"
                + "  . but Ombra drew Brack 4:4 on 2031-03-11\n");
        String out = Shell.in(folder, "roundup", ".").out();
        assertTrue(out.contains("  Ombra       1    0      1     0       1\n"), out);
        assertTrue(out.contains("  Brack       1    0      1     0       1\n"), out);
    }

    @Test
    void aDisputeShowsAndCountsAsBooked() throws IOException {
        SmallWar.into(folder);
        put("week-2.week", "week 2 of Heron-Season\nOmbra beat Brack 5:2 on 2031-03-11 disputed\n");
        String out = Shell.in(folder, "roundup", ".").out();
        assertTrue(out.contains("Ombra beat 5:2 ?"), out);
        assertTrue(out.contains("? disputed: counted as booked until it is ruled."), out);
    }

    @Test
    void whoHasWithdrawnOwesNoList() throws IOException {
        SmallWar.into(folder);
        put("week-3.week", "week 3 of Heron-Season\nNib withdrew\n");
        String out = Shell.in(folder, "roundup", ".").out();
        assertFalse(out.contains("Nib   missing"), out);
        assertTrue(out.lines().anyMatch(line -> line.startsWith("  Nib ") && line.endsWith("  left")), out);
    }

    @Test
    void aForfeitIsALossForWhoGaveTheGame() throws IOException {
        SmallWar.into(folder);
        put("week-2.week", "week 2 of Heron-Season\nOmbra forfeited to Brack round 1\n");
        String out = Shell.in(folder, "roundup", ".").out();
        assertTrue(out.lines().anyMatch(line -> line.matches("  Ombra +1 +0 +0 +1 +0")), out);
        // The scoring card gives nothing for a forfeit, so nothing is given.
        assertTrue(out.lines().anyMatch(line -> line.matches("  Brack +1 +1 +0 +0 +0")), out);
    }

    @Test
    void namesStandApartAndWideOnesFit() throws IOException {
        String wide = "\u6C34\u9E5F".repeat(30);
        put("a.campaign", "campaign Night \"" + wide + "\"\nplayer P1\nplayer P2\nplayer P3 \"" + wide
                + "\"\nround 1\n  . P1 meets P3\n  . P2 rests\nP1 beat P3 round 1\n");
        put("names.campaign", "names of Night\nP1 \"\u05D3\u05D5\u05E8\u05D4 the Elder of the long, long name\"\n");
        Shell shell = Shell.in(folder, "roundup", ".");
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("\u05D3\u05D5\u05E8\u05D4"), shell.out());
        assertTrue(shell.out().contains("P2 rests"), shell.out());
        for (String line : shell.lines()) {
            // Each of these letters takes two columns on a terminal (Unicode Standard Annex 11: East Asian Wide).
            int columns = line.codePoints().map(c -> c == 0x6C34 || c == 0x9E5F ? 2 : 1).sum();
            assertTrue(columns < 80, columns + ": " + line);
        }
    }

    private void put(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }
}
