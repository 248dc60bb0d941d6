package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands on a line for some eras holds in those: every kind of line, and every sum worked out by hand; invented. */
class EraLinesTest {
    private static final String ERAS = """
            era Early
            era Middle after Early
            era Late after Middle
            """;
    private static final String RULES = "rules Lines\n" + ERAS + """
            unit Line
              . strength 3 for 6 points
              . strength 3 for 9 points from Late
              . option Bell for 1 point
              . option Bell for 4 points in Middle
              . option Mast for 2 points to Middle
            unit Gun
              . strength 1 for 10 points
              . strength 1 for 8 points in Middle
              . needs Long-Gun
            unit Cart
              . strength 1 for 2 points
            formation Company
              . billet Ranks 1 to 2 of Line
              . billet Ranks 3 to 4 of Line from Late
            support Battery at most 1 of Gun
            support Park at most 1 of Gun in Middle
            support Train at most 9 of Cart
            limit Few-Carts
              . at most 2 of Cart
              . at most 1 of Cart from Middle
              . at most 3 of Cart in Late
            """;
    private static final String LIST = """
            list by Nib round 1
            Company
              . Line, Bell
              . Line, Mast
            support
              . 2 Gun
              . 2 Cart
            """;

    @TempDir
    Path folder;

    private void write() {
        Folders.write(folder.resolve("lines.rules"), RULES);
        Folders.write(folder.resolve("works.range"), "range Works\npiece Long-Gun\npiece Short-Gun\n");
        Folders.write(folder.resolve("season.campaign"), "campaign Season\nplays Lines\nplayer Nib\nround 1\n  . era Early\n"
                + "  . limit 100 points\nlikeness Club\n  . lets Short-Gun stand for Long-Gun to Middle\n");
        Folders.write(folder.resolve("nib.shelf"), "shelf of Nib\n2 Short-Gun\n");
        Folders.write(folder.resolve("nib-1.list"), LIST);
    }

    /** What is said of one era: its lines, up to the next. */
    private List<String> era(String list, String era) {
        List<String> lines = Shell.in(folder, "eras", list).lines();
        int from = lines.stream().filter(line -> line.startsWith(era + ": ")).map(lines::indexOf).findFirst().orElseThrow();
        int to = lines.subList(from, lines.size()).indexOf("");
        return lines.subList(from, to < 0 ? lines.size() : from + to);
    }

    @Test
    void costsOptionsSupportsAndBounds() {
        write();
        assertEquals(List.of(), Shell.in(folder, "check", "lines.rules", "season.campaign").lines());
        // Lines 6 + 1 and 6 + 2, guns 2 at 10, carts 2 at 2; one gun at most.
        assertEquals(List.of("Early: not legal, 39 of 100 points.",
                "  support.full: No place for 1 of 2 Gun: support Battery takes at most 1 of Gun and is full; support"
                        + " Park: not in Early; available only in Middle.",
                "  Least change: 10 points moved, 1 unit, 29 of 100 points after it. Proven: nothing moves less.",
                "    Take out Gun.", "  With what Nib owns: the same."), era("nib-1.list", "Early"));
        // Lines 6 + 4 and 6 + 2, guns 2 at 8, carts 2 at 2; a park for the second gun, but one cart at most.
        assertEquals(List.of("Middle: not legal, 38 of 100 points.",
                "  limit.at-most: Few-Carts (Lines): at most 1 of Cart; the list has 2, 1 too many.",
                "  Least change: 2 points moved, 1 unit, 36 of 100 points after it. Proven: nothing moves less.",
                "    Take out Cart.", "  With what Nib owns: the same."), era("nib-1.list", "Middle"));
    }

    @Test
    void billetsOptionsThatEndAndLikeness() {
        write();
        Folders.retype(folder.resolve("nib-1.list"), "2 Gun", "Gun");
        // Lines 9 + 1 and 9, the gun 10 again, carts 2 at 2, three of which are allowed; three lines at least.
        List<String> late = era("nib-1.list", "Late");
        assertEquals(List.of("Late: not legal, 33 of 100 points.",
                "  billet.short: Company: billet Ranks takes 3 to 4 of Line and has 2; 1 more must be placed.",
                "  option.not-now: No option Mast for Line at this time."), late.subList(0, 3));
        // 33 and a line of 9; without the gun, for which nothing may stand any more, 10 less.
        assertEquals(List.of("    Take out Mast of Line.", "    Add Line to Company."), late.subList(4, 6));
        // The mast goes for the 2 points that it was written for, and the line comes for 9 by the prices of now.
        assertEquals("  Least change: 11 points moved, 2 units, 42 of 100 points after it. Proven: nothing moves less.",
                late.get(3));
        assertTrue(late.get(6).startsWith("  With what Nib owns: ") && late.get(6).contains(" 32 of 100 points after it."),
                late::toString);
        assertEquals("    Take out Gun.", late.get(7));
    }

    @Test
    void sharesOfAStatedBaseRoundedUpDownOrNotAtAll() {
        Folders.write(folder.resolve("shares.rules"), "rules Shares\n" + ERAS + """
                kind Guns
                unit Foot
                  . strength 1 to 200 for 1 point each
                unit Gun
                  . is Guns
                  . strength 1 for 7 points
                support Field at most 9 of Foot, Gun
                limit Of-Limit
                  . at most 33 percent of the limit on Guns
                  . at most 33 percent of the limit on Guns rounded up in Early
                  . at most 33 percent of the limit on Guns rounded down in Middle
                limit Of-Used
                  . at most 35 percent of points used on Guns
                  . at most 35 percent of points used on Guns rounded up in Early
                  . at most 35 percent of points used on Guns rounded down in Middle
                """);
        Folders.write(folder.resolve("dream.list"), "list Dream under Shares in Early to 61 points\nsupport\n  . 3 Gun\n"
                + "  . Foot of 38\n");
        // 3 guns are 21, and all is 59. 33 percent of 61 is 20.13, 35 percent of 59 is 20.65; rounded up 21, down 20.
        assertEquals(List.of("Early: legal, 59 of 61 points."), era("dream.list", "Early"));
        assertEquals(List.of("Middle: not legal, 59 of 61 points.",
                "  limit.at-most: Of-Limit (Shares): at most 33 percent of the limit on Guns, that is 20 rounded down of 61; the"
                        + " list has 21 points, 1 too many.",
                "  limit.at-most: Of-Used (Shares): at most 35 percent of points used on Guns, that is 20 rounded down of 59; the"
                        + " list has 21 points, 1 too many."), era("dream.list", "Middle").subList(0, 3));
        assertEquals(List.of("Late: not legal, 59 of 61 points.",
                "  limit.at-most: Of-Limit (Shares): at most 33 percent of the limit on Guns, that is 20.13 of 61; the list has 21"
                        + " points, 0.87 too many.",
                "  limit.at-most: Of-Used (Shares): at most 35 percent of points used on Guns, that is 20.65 of 59; the list has 21"
                        + " points, 0.35 too many."), era("dream.list", "Late").subList(0, 3));
        // 28 are too many in any case, and the sum is told rounded up.
        Folders.retype(folder.resolve("dream.list"), "3 Gun\n  . Foot of 38", "4 Gun\n  . Foot of 31");
        assertEquals("  limit.at-most: Of-Limit (Shares): at most 33 percent of the limit on Guns, that is 21 rounded up of 61;"
                + " the list has 28 points, 7 too many.", era("dream.list", "Early").get(1));
    }
}
