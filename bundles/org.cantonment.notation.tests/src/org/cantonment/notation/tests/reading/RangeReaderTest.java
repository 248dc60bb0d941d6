package org.cantonment.notation.tests.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Lot;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Printing;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.junit.jupiter.api.Test;

/** A range means what its text says; what makes no sense is said in its place. Expected as the notation document says. */
class RangeReaderTest {

    private static final String HEAD = "range Oddbarrow \"Oddbarrow Works\" in EUR\npiece Carrier\npiece Officer\n";

    private static Range range(String text) {
        Books books = Books.read("o.range", text);
        assertEquals(List.of(), books.findings("o.range"));
        return books.meaning("o.range", Range.class);
    }

    private static List<String> findings(String text) {
        return Books.read("o.range", text).findings("o.range");
    }

    private static Content known(int count, String name) {
        return new Content(Certainty.KNOWN, count, Id.of("Oddbarrow", name));
    }

    @Test
    void aFamilyLiesInABiggerOne() {
        Range range = range("range Oddbarrow\nfamily Wagons \"Wagons\"\n. note \"Mind the axles.\"\nfamily Guns in Wagons\n");
        assertEquals(List.of(
                new Family(Id.of("Oddbarrow/Wagons"), "Wagons", Optional.empty(), List.of("Mind the axles.")),
                new Family(Id.of("Oddbarrow/Guns"), "", Optional.of(Id.of("Oddbarrow/Wagons")), List.of())),
                range.families());
    }

    @Test
    void aPartCanBeBuiltInSeveralWays() {
        Part part = range(HEAD + "piece Spotter\nbits Wheels\npart Frame\n. builds 2 Spotter, Officer leaves 2 Wheels\n"
                + ". builds 3 Carrier\n. loose at the bench\n").parts().get(0);
        assertEquals(List.of(known(2, "Spotter"), known(1, "Officer")), part.builds().get(0).gives());
        assertEquals(List.of(known(2, "Wheels")), part.builds().get(0).leaves());
        assertEquals(List.of(known(3, "Carrier")), part.builds().get(1).gives());
        assertEquals(Id.of("Oddbarrow/Frame#2"), part.builds().get(1).id());
        assertEquals(Fixing.LOOSE_AT_BENCH, part.fixing());
    }

    @Test
    void aPartAndAWaySayHowLongTheyTake() {
        Part part = range(HEAD + "bits Wheels\npart Frame\n. takes 2 hours\n. builds 3 Carrier\n"
                + ". builds Officer leaves 2 Wheels takes 1 minute\n").parts().get(0);
        assertEquals(OptionalInt.of(120), part.minutes());
        assertEquals(OptionalInt.of(120), part.minutes(part.builds().get(0)));
        assertEquals(OptionalInt.of(1), part.minutes(part.builds().get(1)));
        assertEquals(OptionalInt.empty(), range(HEAD + "part Frame\n. builds 3 Carrier\n").parts().get(0).minutes());
    }

    @Test
    void aTimeIsFromOneToTenThousandAndSaidOnce() {
        assertEquals(List.of("6 number.range 0"), findings(HEAD + "part Frame\n. builds Carrier\n. takes 0 minutes\n"));
        assertEquals(List.of("5 number.range 10001"), findings(HEAD + "part Frame\n. builds Carrier takes 10001 hours\n"));
        assertEquals(List.of("7 said.twice takes 9 hours"),
                findings(HEAD + "part Frame\n. builds Carrier\n. takes 90 minutes\n. takes 9 hours\n"));
        assertEquals(List.of("5 line.place takes 9 hours"), findings(HEAD + "box O-1\n. takes 9 hours\n. Officer\n"));
    }

    @Test
    void aBoxHasContentsPricesAndPrintings() {
        Books books = Books.read("o.range", HEAD + "box O-12 \"Section\"\n. 2 Carrier, Officer\n. at most 1 of Officer\n"
                + ". price 24.50 from 2031-01-01 to 2031-12-31\n. price 300 SEK from 2032-01-01\n"
                + ". stock 12 on 2031-02-01\n. code \"OB/0012\"\n. printing Second from 2031-06-01\n.. 3 Carrier\n");
        assertEquals(List.of(), books.findings("o.range"));
        Box box = books.meaning("o.range", Range.class).boxes().get(0);
        assertEquals(List.of(known(2, "Carrier"), known(1, "Officer")), box.contents());
        assertEquals(List.of(new Cap(Id.of("Oddbarrow/O-12#2"), 1, List.of(Id.of("Oddbarrow/Officer")))), box.caps());
        assertEquals(List.of("EUR 24.50", "SEK 300.00"),
                box.prices().stream().map(price -> price.money().toString()).toList());
        assertTrue(box.prices().get(0).when().covers(Occasion.on(LocalDate.of(2031, 12, 31)), EraOrder.NONE));
        assertTrue(!box.prices().get(0).when().covers(Occasion.on(LocalDate.of(2032, 1, 1)), EraOrder.NONE));
        assertEquals(List.of("OB/0012"), box.codes());
        assertEquals(12, box.stock().get(0).count());
        Printing second = box.printings().get(0);
        assertEquals(Id.of("Oddbarrow/O-12/Second"), second.id());
        assertEquals(List.of(known(3, "Carrier")), second.contents());
        assertTrue(books.places("o.range", "Oddbarrow/O-12/Second#1"));
    }

    @Test
    void aSellerTradesInAnotherCurrencyThanTheMaker() {
        Seller seller = range(HEAD + "box O-12\n. 3 Carrier\nseller Quay-Shop in SEK\n. postage 60 free from 500.00\n"
                + ". discount 10 percent from 1000\n. delivers in 5 days\n. offers 3 O-12 for 200 each to 2031-04-30\n"
                + ". lot Attic-Tin for 25.00 EUR\n.. 14 Carrier\n.. guessed 6 Officer\n.. unknown 9 Carrier\n")
                .sellers().get(0);
        assertEquals("SEK 500.00", seller.postage().get(0).freeFrom().orElseThrow().toString());
        assertEquals(OptionalInt.of(5), seller.deliveryDays());
        Offer offer = seller.offers().get(0);
        assertEquals(OptionalInt.of(3), offer.count());
        assertEquals("SEK 200.00", offer.money().toString());
        assertTrue(offer.each());
        Lot lot = seller.lots().get(0);
        assertEquals("EUR 25.00", lot.money().toString());
        assertEquals(List.of(Certainty.KNOWN, Certainty.GUESSED, Certainty.UNKNOWN),
                lot.contents().stream().map(Content::certainty).toList());
    }

    @Test
    void aBundleStandsForSeveralBoxes() {
        Box bundle = range(HEAD + "box O-12\n. Carrier\nbundle O-50\n. 3 Carrier\n. instead of 3 O-12\n").boxes().get(1);
        assertTrue(bundle.bundle());
        assertEquals(List.of(known(3, "O-12")), bundle.insteadOf());
    }

    @Test
    void aFamilyInsideItselfLosesItsParent() {
        Books books = Books.read(Map.of("a.range", "range Weir\nfamily Boats in Oddbarrow/Craft\nfamily Punts in Boats\n",
                "b.range", "range Oddbarrow\nfamily Craft in Boats\n"));
        assertEquals(List.of("2 name.circle Oddbarrow/Craft"), books.findings("a.range"));
        assertEquals(List.of("2 name.circle Boats"), books.findings("b.range"));
        List<Family> families = books.meaning("a.range", Range.class).families();
        assertEquals(Optional.empty(), families.get(0).parent());
        assertEquals(Optional.of(Id.of("Weir/Boats")), families.get(1).parent());
    }

    @Test
    void nothingHoldsItself() {
        Books books = Books.read("o.range", HEAD + "part Frame\n. builds Sprue\npart Sprue\n. builds Frame\n. builds Carrier\n");
        assertEquals(List.of("5 name.circle Sprue", "7 name.circle Frame"), books.findings("o.range"));
        assertEquals(List.of(), books.meaning("o.range", Range.class).parts().get(0).builds());
        assertEquals(1, books.meaning("o.range", Range.class).parts().get(1).builds().size());
    }

    @Test
    void aPriceNeedsACurrencyAndItsDecimals() {
        String box = "range Oddbarrow\npiece Carrier\nbox O-12\n. Carrier\n";
        assertEquals(List.of("5 money.currency 24.50"), findings(box + ". price 24.50\n"));
        assertEquals(List.of("5 money.amount 24.505"), findings(box + ". price 24.505 EUR\n"));
        assertEquals(List.of("5 money.currency Xyq"), findings(box + ". price 24.50 Xyq\n"));
        assertEquals(List.of("1 money.currency Lumps"), findings("range Oddbarrow in Lumps\n"));
    }

    @Test
    void emptyPartsAndBoxesAreAskedAbout() {
        Books books = Books.read("o.range", "range Oddbarrow\npart Frame\n. glued\n");
        assertEquals(List.of("2 part.builds-nothing Frame"), books.findings("o.range"));
        assertEquals(Severity.CAUTION, books.finding("o.range").severity());
        Books box = Books.read("o.range", "range Oddbarrow\nbox O-1\n");
        assertEquals(List.of("2 box.empty O-1"), box.findings("o.range"));
        assertEquals(Severity.NOTE, box.finding("o.range").severity());
    }

    @Test
    void aLineUnderTheWrongHeadingIsLeftOut() {
        Books books = Books.read("o.range", HEAD + ". price 3.00\nbox O-12\n. Carrier\n. postage 3.00\n. code \"A\"\n.. 2 Carrier\n");
        assertEquals(List.of("4 line.place price 3.00", "7 line.place postage 3.00", "9 line.place 2 Carrier"),
                books.findings("o.range"));
        assertEquals(List.of(known(1, "Carrier")), books.meaning("o.range", Range.class).boxes().get(0).contents());
    }

    @Test
    void aNameThatMeansNothingIsLeftOutAlone() {
        Books books = Books.read("o.range", HEAD + "box O-12\n. 2 Carier, Officer\n");
        assertEquals(List.of("5 name.unknown Carier"), books.findings("o.range"));
        assertEquals(List.of(known(1, "Officer")), books.meaning("o.range", Range.class).boxes().get(0).contents());
    }

    @Test
    void aPartIsFixedOneWayOnly() {
        assertEquals(List.of("7 said.twice glued"),
                findings(HEAD + "part Frame\n. builds Carrier\n. loose between games\n. glued\n"));
    }
}
