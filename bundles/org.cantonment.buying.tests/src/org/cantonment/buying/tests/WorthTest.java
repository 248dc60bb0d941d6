package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.EUR;
import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.shelf;
import static org.cantonment.buying.tests.Shop.target;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Question;
import org.cantonment.buying.worth.Valuer;
import org.cantonment.buying.worth.Worth;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** A bundle of four single boxes, solved by hand. */
class WorthTest {

    private static final Shop SHOP = new Shop().pieces("Marsh", "Car", "Staff").extra("Rule-Book")
            .box("Marsh-Platoon", "12 Marsh", "18.00").box("Marsh-Company", "24 Marsh", "32.00").box("Cars", "3 Car", "22.00")
            .box("Staff-Box", "5 Staff", "9.00").box("Book-Box", "1 Rule-Book", "8.00")
            .bundle("Muster", "24 Marsh, 3 Car, 5 Staff, 1 Rule-Book", "60.00");

    private static Worth worth(Supply shelf, String needs) {
        Optional<Question> player = needs.isEmpty() ? Optional.empty()
                : Optional.of(Question.of(SHOP.market(), shelf, List.of(target("Player", needs))));
        return Valuer.of(id("Muster"), List.of(SHOP.range()), SHOP.market(), player, EUR, CancelToken.NEVER,
                Progress.SILENT);
    }

    @Test
    void theSamePiecesSingly() {
        Worth worth = worth(Supply.NONE, "");
        assertEquals(eur("63.00"), worth.singles().orElseThrow().total());
        assertEquals("1 Cars, 1 Marsh-Company, 1 Staff-Box", Shop.text(worth.singles().get()));
        assertTrue(worth.singles().get().leftovers().isEmpty());
        assertEquals(eur("3.00"), worth.saving().orElseThrow());
        assertEquals(eur("8.00"), worth.extras().get(0).value().orElseThrow());
        assertEquals(eur("11.00"), worth.savingWithExtras().orElseThrow());
        assertTrue(worth.player().isEmpty());
    }

    private static void says(String with, String saving, String dearer, Supply shelf, String needs) {
        Worth.ToPlayer player = worth(shelf, needs).player().orElseThrow();
        assertEquals(eur(with), player.with().total());
        assertEquals(eur(saving), player.saving().orElseThrow());
        assertEquals(eur(dearer), player.dearer().orElseThrow());
    }

    @Test
    void whatItSavesEachPlayer() {
        says("40.00", "0.00", "20.00", Supply.NONE, "12 Marsh, 3 Car");
        says("54.00", "0.00", "6.00", Supply.NONE, "20 Marsh, 3 Car");
        says("60.00", "2.00", "0.00", Supply.NONE, "20 Marsh, 3 Car, 1 Rule-Book");
        says("54.00", "0.00", "6.00", shelf("1 Rule-Book"), "20 Marsh, 3 Car, 1 Rule-Book");
        assertEquals(eur("62.00"),
                worth(Supply.NONE, "20 Marsh, 3 Car, 1 Rule-Book").player().get().without().orElseThrow().total());
    }

    @Test
    void aBoxThatIsNotOnSaleHasNoFigures() {
        Worth worth = Valuer.of(id("Barge"), List.of(SHOP.range()), SHOP.market(), Optional.empty(), EUR, CancelToken.NEVER,
                Progress.SILENT);
        assertTrue(worth.price().isEmpty() && worth.saving().isEmpty());
        assertEquals("worth.no-price", worth.findings().get(0).code());
    }

    /** The choice of how to build is part of what is bought: ready cars do not make up for frames. */
    @Test
    void partsCountAsParts() {
        Shop shop = new Shop().pieces("Crank", "Gun").part("Frame", "1 Crank", "1 Gun").part("Sprue", "1 Gun", "1 Crank")
                .box("Ready", "3 Crank", "2.00").box("Sprues", "2 Sprue", "9.00").bundle("Pack", "3 Frame", "14.00");
        Worth worth = Valuer.of(id("Pack"), List.of(shop.range()), shop.market(), Optional.empty(), EUR, CancelToken.NEVER,
                Progress.SILENT);
        assertEquals(eur("18.00"), worth.singles().orElseThrow().total());
        assertEquals("1 Sprue", Shop.left(worth.singles().get()));
        assertEquals(eur("4.00"), worth.saving().orElseThrow());
    }
}
