package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Common practice, no source: what everybody who sells and collects boxes takes for granted, in cases of our own. */
class TradeOfBoxesTest {

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        book("works.range", """
                range Works in EUR
                piece Guard "Guard"
                piece Sapper "Sapper"
                piece Officer "Officer"
                part Sprue "Sprue"
                  . builds 4 Guard
                  . builds 3 Sapper
                box W-1 "Guards, one platoon"
                  . 2 Sprue, 2 Guard
                  . price 20.00 from 2031-01-01
                box W-2 "Officers"
                  . 2 Officer
                  . price 9.00 from 2031-01-01
                bundle W-9 "Two platoons of guards"
                  . 4 Sprue, 6 Guard
                  . price 34.00 from 2031-01-01
                """);
        book("season.campaign", "campaign Season from 2031-03-01\nplays Pond\nplayer Ombra\nround 1\n  . era Reed-Year\n"
                + "  . limit 100 points\nround 2\n  . era Reed-Year\n  . limit 100 points\n");
        rules("");
    }

    private void rules(String more) {
        book("pond.rules", """
                rules Pond "The pond book"
                era Reed-Year "The Reed Year"
                unit Staff "Company staff"
                  . strength 2 for 10 points
                  . each needs Officer
                unit Platoon "Guard platoon"
                  . strength 10 for 20 points
                  . each needs Guard
                unit Digger "Sapper section"
                  . strength 6 for 18 points
                  . each needs Sapper
                formation Company "Guard company"
                  . billet Command 1 of Staff
                  . billet Line 2 to 3 of Platoon
                formation Works "Digging party"
                  . billet Line 1 of Digger
                """ + more);
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    private List<String> ask(String... words) {
        return Shell.in(folder, words).lines();
    }

    /** A bundle of two full platoons is nearly the least company: only the command is missing. */
    @Test
    void twoPlatoonsLackOnlyTheCommand() {
        book("ombra.shelf", "shelf of Ombra\nW-9\n");
        List<String> lines = ask("reach", "Ombra");
        assertTrue(lines.contains("  at least: Company staff of 2, 2 Guard platoon of 10: 2 pieces away: 2 Officer."), lines.toString());
        assertTrue(lines.contains("            For 9.00 EUR: 1 Officers."), lines.toString());
    }

    /** Spare figures can be worked over into the command that is missing. */
    @Test
    void spareFiguresBecomeTheCommand() {
        rules("likeness Table\n  . turns Guard into Officer at most 2 times\n");
        book("ombra.shelf", "shelf of Ombra\n22 Guard\n");
        List<String> lines = ask("reach", "Ombra");
        assertTrue(lines.contains("  at least: Company staff of 2, 2 Guard platoon of 10: now."), lines.toString());
        book("ombra.shelf", "shelf of Ombra\n21 Guard\n");
        lines = ask("reach", "Ombra");
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("  at least: Company staff of 2, 2 Guard platoon of 10: 1 piece away")),
                lines.toString());
    }

    /** The same box built another way fields another unit, and one box does not field both. */
    @Test
    void theSameBoxBuiltAnotherWayFieldsAnotherUnit() {
        book("ombra.shelf", "shelf of Ombra\nW-1\n");
        book("guards.list", "list by Ombra round 1\nsupport\n  . Platoon\n");
        book("sappers.list", "list by Ombra round 2\nsupport\n  . Digger\n");
        assertEquals("Ombra, round 1: all 10 pieces stand.", ask("turnout", "guards.list").get(0));
        assertEquals("Ombra, round 2: all 6 pieces stand.", ask("turnout", "sappers.list").get(0));
        Shell both = Shell.in(folder, "turnout", "guards.list", "sappers.list");
        assertEquals(1, both.code());
        assertEquals("2 lists, one choice of what is glued: 6 pieces are short in all.", both.lines().get(0));
    }

    /** What a bundle saves is told against the single boxes of as many models; who needs less of it saves less, or nothing. */
    @Test
    void whatABundleSavesIsLessForWhoNeedsLess() {
        List<String> lines = ask("worth", "W-9", "--for", "Ombra", "--also", "10 Guard");
        assertTrue(lines.contains("The same pieces singly: 60.00 EUR. Proven: nothing costs less."), lines.toString());
        assertTrue(lines.contains("Against them it saves 26.00 EUR."), lines.toString());
        assertTrue(lines.contains("  To Ombra it saves nothing."), lines.toString());
        lines = ask("worth", "W-9", "--for", "Ombra", "--also", "20 Guard");
        assertTrue(lines.contains("  To Ombra it saves 6.00 EUR."), lines.toString());
    }
}
