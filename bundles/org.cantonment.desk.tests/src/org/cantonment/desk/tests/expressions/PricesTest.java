package org.cantonment.desk.tests.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.cantonment.rules.Verdict;
import org.cantonment.rules.muster.TallyLine;
import org.junit.jupiter.api.Test;

/** Prices that hang on what else is in the list, in points that can be added up by hand. */
class PricesTest {

    private static final String UNIT = "unit Ram \"Ram\"\n  . is Armour\n  . strength 2 for 10 points\n  . strength 4 for 18 points\n";

    private static Pond ram(String lines) {
        return Pond.with(UNIT + Pond.dotted(lines) + "formation Wing\n  . billet All 0 to 9 of units-of-all\n"
                .replace("units-of-all", "Armour, Eyes"));
    }

    private static List<String> parts(Verdict verdict, String title) {
        return verdict.tally().lines().stream().filter(line -> line.title().equals(title)).map(TallyLine::parts)
                .flatMap(List::stream).map(part -> part.words() + " " + part.points()).toList();
    }

    @Test
    void isDearerOnlyWhenItIsSo() {
        Pond pond = ram("dearer by 3 points when count of Armour is at least 3");
        assertEquals(20, pond.list("Wing; . 2 Ram of 2").verdict().points());
        Verdict three = pond.list("Wing; . 2 Ram of 2; . Ram of 4").verdict();
        assertEquals(47, three.points());
        assertEquals(List.of("strength 2 20", "dearer when count of Armour is at least 3 6", "strength 4 18",
                "dearer when count of Armour is at least 3 3"), parts(three, "Ram"));
    }

    @Test
    void amountsAreNamedAndMayHangOnItsOwnStrength() {
        Pond pond = ram("let Toll be count of Eyes minus 1 but at least 0; dearer by Toll points each;"
                + " cheaper by 1 point when its strength is at least 4 and the round is at least 2");
        // 2 Ram of 4 at 18, with 3 Eyes: Toll is 2, for each of 4: 8; less 1 from round 2. 3 Eyes of 1: 9.
        assertEquals(2 * 18 + 2 * 8 - 2 + 9, pond.in("Late", 2).list("Wing; . 2 Ram of 4; . 3 Bike of 1").verdict().points());
        assertEquals(2 * 18 + 2 * 8 + 9, pond.in("Late", 1).list("Wing; . 2 Ram of 4; . 3 Bike of 1").verdict().points());
    }

    @Test
    void aStartedPointCountsAndNothingIsCheaperThanNothing() {
        assertEquals(14, ram("let A be 7 divided by 2; dearer by A points").list("Wing; . Ram of 2").verdict().points());
        assertEquals(7, ram("let A be 7 divided by 2; cheaper by A points").list("Wing; . Ram of 2").verdict().points());
        Verdict nothing = ram("cheaper by 99 points").list("Wing; . 2 Ram of 2").verdict();
        assertEquals(0, nothing.points());
        assertEquals(List.of("strength 2 20", "cheaper -198", "no less than nothing 178"), parts(nothing, "Ram"));
    }

    @Test
    void pricesMayAskForPointsInAnyOrderOfTheText() {
        // Ram is a tenth of the points of Cart dearer, Cart by 5 when there is a Bike: 10 + 3 and 20 + 5 and 3.
        String cart = "unit Cart\n  . is Armour\n  . strength 1 for 20 points\n  . dearer by 5 points when count of Bike is 1\n";
        String lines = "let Share be 10 percent of points of Cart; dearer by Share points";
        String wing = "formation Wing\n  . billet All 0 to 9 of Armour, Eyes\n";
        String list = "Wing; . Ram of 2; . Cart of 1; . Bike of 1";
        assertEquals(13 + 25 + 3, Pond.with(UNIT + Pond.dotted(lines) + cart + wing).list(list).verdict().points());
        assertEquals(13 + 25 + 3, Pond.with(cart + UNIT + Pond.dotted(lines) + wing).list(list).verdict().points());
    }

    @Test
    void aPriceThatHangsOnItselfIsCutAndTold() {
        assertEquals(List.of("5:5 price.circle: This price asks for points that hang on this price. The line is left out."),
                ram("dearer by 3 points when points used is at least 30").bookFindings());
        assertEquals(1, ram("dearer by 3 points when points of Armour is at least 30").bookFindings().size());
        assertEquals(1, ram("dearer by 3 points when its points is at least 30").bookFindings().size());
        assertEquals(1, ram("dearer by 3 points when any Squad has its points is at least 30").bookFindings().size());
        assertEquals(List.of(), ram("dearer by 3 points when points of Eyes is at least 30").bookFindings());
        String two = "unit Left\n  . strength 1 for 1 point\n  . dearer by 1 point when points of Right is at least 2\n"
                + "unit Right\n  . strength 1 for 1 point\n  . dearer by 1 point when points of Left is at least 2\n"
                + "unit Apart\n  . strength 1 for 1 point\n  . dearer by 1 point when points of Left is at least 1\n";
        assertEquals(List.of("3:5", "6:5"), Pond.with(two).bookFindings().stream().map(f -> f.split(" ")[0]).toList());
        assertEquals(1 + 1 + 2, Pond.with(two + "formation Wing\n  . billet All 0 to 9 of Left, Right, Apart\n")
                .list("Wing; . Left of 1; . Right of 1; . Apart of 1").verdict().points());
    }

    @Test
    void aPriceAsksOnlyForWhatHoldsStill() {
        for (String asked : List.of("count of units gone is 1", "the limit is 3", "pieces of Officer owned is 3",
                "count of Tread in the list is 1", "count of Float is 1")) {
            assertEquals(List.of("price.asks"), ram("dearer by 3 points when " + asked).bookFindings().stream()
                    .map(finding -> finding.replaceAll("^\\S+ |:.*", "")).toList(), asked);
        }
        assertEquals(List.of(), ram("dearer by 3 points when the era is Late and the round is 2").bookFindings());
    }

    @Test
    void whatCannotBeWorkedOutIsToldAndCountsAsNothing() {
        Pond pond = ram("let A be 6 divided by count of Eyes; dearer by A points").list("Wing; . Ram of 2");
        assertEquals(10, pond.verdict().points());
        assertEquals(List.of("2 caution price.unknown: Ram (The Pond Book): what it costs 'dearer by A' was not added: something is "
                + "divided by 0."), pond.said().stream().map(s -> s.replace("3 caution", "2 caution")).toList());
    }

    @Test
    void formationsHaveSuchPricesToo() {
        Pond pond = Pond.with("formation Wing\n  . costs 5 points\n  . billet All 0 to 9 of Armour, Eyes\n"
                + "  . dearer by 2 points when count of Wing is more than 1\n");
        assertEquals(5 + 5 + 4, pond.list("Wing; Wing").verdict().points());
        assertEquals(5, pond.list("Wing").verdict().points());
    }

    @Test
    void aLayerChangesWhatIsSaidOfTheSameThing() {
        String line = "dearer by 3 points when count of Armour is at least 2";
        Pond pond = ram(line).layer("rules Winter over Pond\nchange Ram\n  . " + line.replace("3 points", "4 points") + "\n");
        assertEquals(20 + 8, pond.list("Wing; . 2 Ram of 2").verdict().points());
        Pond other = ram(line).layer("rules Winter over Pond\nchange Ram\n  . dearer by 1 point\n");
        assertEquals(20 + 6 + 2, other.list("Wing; . 2 Ram of 2").verdict().points());
    }

    @Test
    void erasAndRoundsNarrowThem() {
        Pond pond = ram("dearer by 3 points; dearer by 5 points from Late; cheaper by 1 point in rounds 2 to 3");
        assertEquals(13, pond.in("Early", 1).list("Wing; . Ram of 2").verdict().points());
        assertEquals(15, pond.in("Late", 1).list("Wing; . Ram of 2").verdict().points());
        assertEquals(14, pond.in("Late", 3).list("Wing; . Ram of 2").verdict().points());
    }
}
