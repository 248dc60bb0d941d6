package org.cantonment.notation.tests.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.domain.shelf.Source;
import org.cantonment.domain.shelf.State;
import org.cantonment.domain.shelf.StateShare;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishBench;
import org.junit.jupiter.api.Test;

/** A shelf means what its text says. Expectations are from the notation's own document. */
class ShelfReaderTest {

    private static final String RANGE = "range Oddbarrow in EUR\npiece Carrier\npiece Officer\npart Frame\n"
            + ". builds 3 Carrier\nbox O-12\n. 2 Frame, Officer\n. printing Second\n.. 3 Frame\n"
            + "box O-13\n. Officer\n. printing Second\n.. 2 Officer\nseller Quay-Shop\n";
    private static final String CAMPAIGN = "campaign Season\nplayer Ombra\nplayer Brack\n";

    private static Books books(String lines) {
        return Books.read(Map.of("o.range", RANGE, "s.campaign", CAMPAIGN, "ombra.shelf", lines));
    }

    private static Shelf shelf(String lines) {
        Books books = books(lines);
        assertEquals(List.of(), books.findings("ombra.shelf"));
        return books.meaning("ombra.shelf", Shelf.class);
    }

    private static Holding holding(String line) {
        return shelf("shelf of Ombra in EUR\n" + line).holdings().get(0);
    }

    private static List<String> findings(String line) {
        return books("shelf of Ombra in EUR\n" + line).findings("ombra.shelf");
    }

    @Test
    void aShelfHasOwnersACurrencyAndADay() {
        Shelf shelf = shelf("shelf of Ombra, Brack in SEK on 2031-03-01\n. note \"Loft\"\n");
        assertEquals(List.of(Id.of("Season/Ombra"), Id.of("Season/Brack")), shelf.owners());
        assertEquals("SEK", shelf.currency().orElseThrow().getCode());
        assertEquals(Optional.of(LocalDate.of(2031, 3, 1)), shelf.on());
        assertEquals(List.of("Loft"), shelf.notes());
        assertTrue(shelf("shelf of the club\n").club());
    }

    @Test
    void whatWasPaidAndWhenAndWhere() {
        Holding box = holding("2 O-12 for 18.00 on 2031-02-20 from \"the fair\" printing Second\n");
        assertEquals(2, box.count());
        assertEquals("EUR 18.00", box.paid().orElseThrow().toString());
        assertEquals(Optional.of(LocalDate.of(2031, 2, 20)), box.on());
        assertEquals(Optional.of(new Source(Optional.empty(), "the fair")), box.from());
        assertEquals(Optional.of(Id.of("Oddbarrow/O-12/Second")), box.printing());
    }

    @Test
    void aPrintingIsThatOfItsBox() {
        assertEquals(Optional.of(Id.of("Oddbarrow/O-13/Second")), holding("O-13 printing Second\n").printing());
    }

    @Test
    void aSourceThatTheBooksKnowIsFound() {
        assertEquals(Optional.of(new Source(Optional.of(Id.of("Oddbarrow/Quay-Shop")), "Quay-Shop")),
                holding("O-12 from Quay-Shop\n").from());
        assertEquals(Optional.of(new Source(Optional.of(Id.of("Season/Brack")), "Brack")),
                holding("Carrier from Brack\n").from());
        assertEquals(Optional.of(new Source(Optional.empty(), "Market")), holding("Carrier from Market\n").from());
    }

    @Test
    void howSureACountIs() {
        assertEquals(Certainty.GUESSED, holding("guessed 6 Carrier\n").certainty());
        assertEquals(Certainty.UNKNOWN, holding("unknown Officer\n").certainty());
        assertEquals(Certainty.KNOWN, holding("Officer\n").certainty());
        assertEquals(1, holding("Officer\n").count());
    }

    @Test
    void statesAreSharesOfTheCount() {
        Holding holding = holding("4 Carrier, 2 painted, 1 primed\n");
        assertEquals(List.of(new StateShare(OptionalInt.of(2), State.PAINTED),
                new StateShare(OptionalInt.of(1), State.PRIMED)), holding.states());
        assertEquals(List.of(new StateShare(OptionalInt.empty(), State.CONVERTED)),
                holding("4 Carrier converted\n").states());
        assertEquals(Optional.of(Fixing.LOOSE_BETWEEN_GAMES), holding("3 Frame loose between games\n").fixing());
    }

    @Test
    void noMoreArePaintedThanThereAre() {
        assertEquals(List.of(), findings("4 Carrier, 4 painted\n"));
        List<String> found = findings("4 Carrier, 3 painted, 2 primed\n");
        assertEquals(1, found.size());
        assertTrue(found.get(0).startsWith("2 shelf.share "), found::toString);
        assertEquals(List.of(), findings("unknown Carrier, 3 painted\n"));
    }

    @Test
    void whatBecameOfABox() {
        Holding box = holding("O-12\n. built 3 Carrier, Officer painted\n. left Frame\n. lost Officer\n");
        assertEquals(new Made(Id.of(box.id() + "#1"), MadeAct.BUILT, List.of(
                new Held(3, Id.of("Oddbarrow/Carrier"), Optional.empty()),
                new Held(1, Id.of("Oddbarrow/Officer"), Optional.of(State.PAINTED)))), box.made().get(0));
        assertEquals(List.of(MadeAct.BUILT, MadeAct.LEFT, MadeAct.LOST), box.made().stream().map(Made::act).toList());
    }

    @Test
    void nothingIsBuiltOfAPiece() {
        assertEquals(List.of("3 line.place built Officer"), findings("2 Carrier\n. built Officer\n"));
    }

    @Test
    void anOddmentIsWorthSomething() {
        Shelf shelf = shelf("shelf of Ombra in EUR\noddment 2 \"Range ruler\" worth 4.00\n");
        assertEquals(2, shelf.oddments().get(0).count());
        assertEquals("Range ruler", shelf.oddments().get(0).text());
        assertEquals("EUR 4.00", shelf.oddments().get(0).worth().orElseThrow().toString());
    }

    @Test
    void aWishHasTastesAndABudget() {
        Books books = Books.read(Map.of("l.rules", "rules Lake\nunit Raft\nunit Barge\n", "o.shelf",
                "shelf of the club in EUR\nwish Spring \"For spring\"\n. first Raft\n. never Barge\n"
                        + ". budget 40 per round saved\n. rounds 2 to 4\n. spares 20 percent\n"));
        assertEquals(List.of(), books.findings("o.shelf"));
        Wish wish = books.meaning("o.shelf", Shelf.class).wishes().get(0);
        assertEquals("For spring", wish.label());
        assertEquals(List.of(Taste.FIRST, Taste.NEVER), wish.tastes().stream().map(taste -> taste.taste()).toList());
        assertEquals("EUR 40.00", wish.budgets().get(0).money().toString());
        assertTrue(wish.budgets().get(0).perRound());
        assertTrue(wish.budgets().get(0).saved());
        assertEquals(List.of(new InRounds(2, 4)), wish.rounds());
        assertEquals(OptionalInt.of(20), wish.sparesPercent());
    }

    @Test
    void aWishSaysWhatGetsDoneAtTheBench() {
        assertEquals(Optional.of(new BenchTime(360, Measure.MINUTES, false)), bench(". bench 6 hours per round\n"));
        assertEquals(Optional.of(new BenchTime(90, Measure.MINUTES, false)), bench(". bench 90 minutes per round\n"));
        assertEquals(Optional.of(new BenchTime(60, Measure.MINUTES, true)), bench(". bench 1 hour per week\n"));
        assertEquals(Optional.of(new BenchTime(4, Measure.PARTS, false)), bench(". bench 4 parts per round\n"));
        assertEquals(Optional.of(new BenchTime(0, Measure.PARTS, true)), bench(". bench 0 parts per week\n"));
        assertEquals(Optional.empty(), bench(". budget 4.00\n"));
        assertEquals(List.of("4 said.twice bench 2 parts per round"),
                findings("wish Spring\n. bench 1 hour per week\n. bench 2 parts per round\n"));
        assertEquals(List.of("3 number.range 10001"), findings("wish Spring\n. bench 10001 parts per round\n"));
    }

    private static Optional<BenchTime> bench(String line) {
        return shelf("shelf of Ombra in EUR\nwish Spring\n" + line).wishes().get(0).bench().map(WishBench::time);
    }

    @Test
    void badDatesAndDoubleWordsAreSaid() {
        assertEquals(List.of("2 date.none 2031-02-30"), findings("O-12 on 2031-02-30\n"));
        assertEquals(List.of("2 said.twice for 9.00"), findings("O-12 for 8.00 for 9.00\n"));
        assertEquals(List.of("3 line.place built Carrier"), findings("oddment \"Dice\"\n. built Carrier\n"));
    }
}
