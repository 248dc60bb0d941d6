package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.EUR;
import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.offer;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.MarketMaker;
import org.cantonment.buying.market.Rates;
import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Stock;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class MarketTest {

    private static Validity from(LocalDate day) {
        return Validity.of(new Reach(Optional.of(new OnDate(day)), Optional.empty()));
    }

    private static Market market(LocalDate day, Box... boxes) {
        Range range = new Range(Id.of("Works"), "", Optional.of(EUR), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(boxes), List.of(), List.of());
        return MarketMaker.on(day, List.of(range), List.of(), Rates.on(List.of(), day, EUR));
    }

    private static Box box(List<Price> prices, List<Validity> sold, List<Stock> stock) {
        return new Box(id("Box"), "", false, Shop.contents("1 Foot"), List.of(), prices, sold, stock, List.of(), List.of(),
                List.of(), List.of());
    }

    @Test
    void theNewestPriceThatHoldsIsMeant() {
        LocalDate may = LocalDate.of(2031, 5, 1);
        Box box = box(List.of(new Price(id("Box").line(1), eur("9.00"), Validity.ALWAYS),
                new Price(id("Box").line(2), eur("10.00"), from(may))), List.of(), List.of());
        assertEquals(eur("9.00"), market(may.minusDays(1), box).wares().get(0).cost());
        assertEquals(eur("10.00"), market(may, box).wares().get(0).cost());
    }

    @Test
    void whatIsNotSoldOrNotThereIsNoWare() {
        LocalDate may = LocalDate.of(2031, 5, 1);
        List<Price> prices = List.of(new Price(id("Box").line(1), eur("9.00"), Validity.ALWAYS));
        assertEquals(1, market(may, box(prices, List.of(from(may)), List.of())).wares().size());
        Market early = market(may.minusDays(1), box(prices, List.of(from(may)), List.of()));
        assertTrue(early.wares().isEmpty());
        assertEquals(List.of(id("Box")), List.copyOf(early.unpriced().keySet()));
        Stock none = new Stock(id("Box").line(2), 0, Optional.of(may));
        Stock three = new Stock(id("Box").line(3), 3, Optional.of(may.minusDays(9)));
        assertTrue(market(may, box(prices, List.of(), List.of(none, three))).wares().isEmpty());
        assertEquals(3, market(may.minusDays(1), box(prices, List.of(), List.of(none, three))).wares().get(0).most());
    }

    @Test
    void aPriceThatNoRateTurnsIsLeftOutAndSaid() {
        Market market = new Shop().pieces("Foot").box("Platoon", "12 Foot", "18.00").seller("Fjord", "", "", "", 3,
                offer("S", -1, "Platoon", Money.parse("SEK 90.00"))).market();
        assertEquals(1, market.wares().size());
        assertEquals(List.of("buying.no-rate"), market.findings().stream().map(one -> one.code()).toList());
    }

    /** ISO 4217 gives the yen no minor unit and the Kuwaiti dinar three decimals. */
    @Test
    void ratesRoundToTheLeastUnitOfEachCurrency() {
        Rate yen = new Rate(Id.of("R"), Money.parse("EUR 1.00"), Money.parse("JPY 163"), Validity.ALWAYS);
        Rate dinar = new Rate(Id.of("R2"), Money.parse("KWD 1.000"), Money.parse("EUR 3.01"), Validity.ALWAYS);
        Rates rates = Rates.on(List.of(yen, dinar), Shop.DAY, EUR);
        assertEquals(eur("6.13"), rates.turn(Money.parse("JPY 1000")).orElseThrow());
        assertEquals(eur("3.76"), rates.turn(Money.parse("KWD 1.250")).orElseThrow());
        Rates back = Rates.on(List.of(yen), Shop.DAY, Money.parse("JPY 1").getCurrencyUnit());
        assertEquals(Money.parse("JPY 408"), back.turn(eur("2.50")).orElseThrow());
        assertTrue(rates.turn(Money.parse("SEK 1.00")).isEmpty());
    }
}
