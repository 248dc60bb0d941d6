package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.boxes;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** Frames that build handfuls, cars of one meaning, a choice of builds to regret; as books, every number solved by hand. */
class HandfulsAndMeaningsTest {
    @TempDir
    private Path folder;

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    private void campaign(String likeness) {
        book("war.campaign", "campaign War from 2031-03-03 in EUR\nplays Book\nplayer P1 \"Ombra\"\nround 1\n  . limit 100 points\n");
        book("book.rules", "rules Book\nunit Look\n  . needs 3 Spotter\n  . strength 1 for 5 points\nunit Load\n  . needs Carrier\n"
                + "  . strength 1 for 5 points\nunit Cranks\n  . needs 3 Crank\n  . strength 1 for 9 points\nunit Treads\n"
                + "  . needs 2 Tread\n  . strength 1 for 9 points\nformation Whole\n  . billet All 1 to 4 of Look, Load, Cranks,"
                + " Treads\n" + likeness);
        book("works.range", "range Works in EUR\npiece Spotter \"Spotter\"\npiece Carrier \"Carrier\"\npiece Crank \"Crank car\"\n"
                + "piece Tread \"Tread wagon\"\npiece Pike \"Pike car\"\npart Frame \"Frame\"\n  . builds 2 Spotter\n"
                + "  . builds 3 Carrier\n  . glued\nbox Frame-Box \"Frame box\"\n  . Frame\n  . price 5.00\n"
                + "box Tread-Box \"Treads\"\n  . Tread\n  . price 8.00\nbox Pike-Box \"Pikes\"\n  . 2 Pike\n  . price 13.00\n");
    }

    /** Each of the needs counts as served, two frames are not enough: two for the spotters and one for the carrier. */
    @Test
    void handfulsAreCountedInFrames() {
        campaign("");
        book("ombra.list", "list by P1 round 1\nWhole\n  . Look\n  . Load\n");
        book("ombra.shelf", "shelf of P1 in EUR on 2031-03-01\n2 Frame\n");
        String out = Shell.in(folder, "turnout", "ombra.list").out();
        assertTrue(out.contains("Out of 2 of Frame, 3 for Look take 2 at 2 each and 1 for Load take 1 at 3 each: that takes 3. Short by"
                + " 1."), out);
        JsonObject plan = json(folder, "buy", "Ombra").getAsJsonObject("plan");
        assertEquals("1 Frame-Box", boxes(plan));
        assertEquals("5.00", text(plan, "total"));
        book("ombra.shelf", "shelf of P1 in EUR on 2031-03-01\n3 Frame\n");
        assertEquals("0.00", text(json(folder, "buy", "Ombra").getAsJsonObject("plan"), "total"));
    }

    /** Five crank cars for three cranks and two treads: without the rule they do, with it two more are wanted: two pikes. */
    @Test
    void whatStandsForItselfStandsForNothingElse() {
        String lets = "likeness Club\n  . lets Crank, Pike stand for Tread\n";
        campaign(lets);
        book("ombra.list", "list by P1 round 1\nWhole\n  . Cranks\n  . Treads\n");
        book("ombra.shelf", "shelf of P1 in EUR on 2031-03-01\n5 Crank\n");
        assertEquals("0.00", text(json(folder, "buy", "Ombra").getAsJsonObject("plan"), "total"));
        campaign(lets + "  . one table one meaning\n");
        String out = Shell.in(folder, "turnout", "ombra.list").out();
        assertTrue(out.contains("hort by 2") || out.contains("2 short") || out.contains("short 2"), out);
        JsonObject plan = json(folder, "buy", "Ombra").getAsJsonObject("plan");
        assertEquals("1 Pike-Box", boxes(plan));
        assertEquals("13.00", text(plan, "total"));
    }

    /** Both frames built as gun cars: the first round is short of a crank car, 12.00; one of each, and nothing is. */
    @Test
    void bothFramesAsGunsAreRegretted() {
        Folders.copy("growing", folder);
        book("ombra.shelf", "shelf of P1 in EUR on 2031-03-01\nMarsh-Box\nCar-Box\n  . built 2 Gun\n");
        List<String> lines = Shell.in(folder, "turnout", "lists/ombra-1.list").lines();
        assertTrue(lines.stream().anyMatch(line -> line.contains("12.00 EUR, 1 Car box")), lines.toString());
        assertEquals("12.00", text(json(folder, "buy", "Ombra", "--lists", "1,2").getAsJsonObject("plan"), "total"));
        book("ombra.shelf", "shelf of P1 in EUR on 2031-03-01\nMarsh-Box\nCar-Box\n  . built Gun, Crank\n");
        assertEquals("0.00", text(json(folder, "buy", "Ombra", "--lists", "1,2").getAsJsonObject("plan"), "total"));
    }

    /** 14 foot and two cranks are sure to be in the tin: two marsh boxes and a car box, 32.00 to 25.00. The rest is said. */
    @Test
    void aTinIsWorthWhatIsSureToBeInIt() {
        Folders.copy("growing", folder);
        book("attic.range", "range Attic in EUR\npiece Bell \"Bell\"\nseller Stall \"The stall\" in EUR\n  . lot Tin \"A tin\" for 25.00\n"
                + "    .. 14 Foot, 2 Crank\n    .. guessed 6 Foot\n    .. unknown 9 Bell\n");
        JsonObject worth = json(folder, "worth", "Tin");
        assertEquals("32.00", text(worth.getAsJsonObject("singles"), "total"));
        assertEquals("7.00", text(worth, "saving"));
        List<String> lines = Shell.in(folder, "worth", "Tin").lines();
        assertTrue(lines.contains("What may lie in it is not counted: up to 9 of Bell that nobody has counted, 6 of Marsh foot that"
                + " are guessed."), lines.toString());
        List<String> buy = Shell.in(folder, "buy", "Ombra", "--also", "18 Foot, 2 Crank").lines();
        assertTrue(buy.contains("Ombra, besides: all 20 pieces stand, exact; it counts on guesses: 4 Marsh foot."), buy.toString());
    }

    /** 25.00, 5 percent off and 6.00 for the postage. */
    @Test
    void postageAndDiscountAreInThePrice() {
        Folders.copy("growing", folder);
        book("attic.range", "range Attic in EUR\nseller Stall \"The stall\" in EUR\n  . postage 6.00 free from 50.00\n"
                + "  . discount 5 percent\n  . lot Tin \"A tin\" for 25.00\n    .. 14 Foot, 2 Crank\n");
        JsonObject worth = json(folder, "worth", "Tin");
        assertEquals(List.of("29.75", "25.00", "2.25"), List.of(text(worth, "price"), text(worth, "bare"), text(worth, "saving")));
        assertEquals("A tin costs 29.75 EUR (25.00 without postage and discounts), by prices of 2031-03-03 (the day on which the"
                + " campaign begins).", Shell.in(folder, "worth", "Tin").lines().get(0));
    }

    @Test
    void thatThereIsNoOtherPlanIsSaid() {
        Folders.copy("growing", folder);
        List<String> lines = Shell.in(folder, "buy", "Ombra", "--next", "9", "--within", "0.01").lines();
        assertTrue(lines.contains("No other plan costs up to 0.01 EUR more."), lines.toString());
        assertTrue(Shell.in(folder, "buy", "Ombra", "--budget", "0").lines().contains("Nothing of it can be had for 0.00 EUR."));
    }
}
