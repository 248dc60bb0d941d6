package org.cantonment.domain.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Amounts;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class AmountsTest {

    @Test
    void minorUnitsAreThoseOfIso4217() {
        Map<String, Integer> published = Map.of("EUR", 2, "GBP", 2, "USD", 2, "JPY", 0, "ISK", 0, "KWD", 3, "BHD", 3,
                "TND", 3);
        published.forEach((code, digits) -> assertEquals(digits,
                Amounts.currency(code).orElseThrow().getDecimalPlaces(), code));
        assertEquals(Amounts.currency("EUR"), Amounts.currency("eur"));
        assertEquals(Optional.empty(), Amounts.currency("QQQ"));
        assertEquals(Optional.empty(), Amounts.currency(""));
    }

    @Test
    void moneyHasNoMoreDecimalsThanItsCurrency() {
        CurrencyUnit euro = CurrencyUnit.of("EUR");
        assertEquals("24.50", Amounts.text(Amounts.money(euro, new BigDecimal("24.5")).orElseThrow()));
        assertEquals("100.00", Amounts.text(Amounts.money(euro, new BigDecimal("1E+2")).orElseThrow()));
        assertEquals("0.10", Amounts.text(Amounts.money(euro, new BigDecimal("0.1000")).orElseThrow()));
        assertEquals(Optional.empty(), Amounts.money(euro, new BigDecimal("24.505")));
        assertEquals(Optional.empty(), Amounts.money(CurrencyUnit.of("JPY"), new BigDecimal("0.5")));
    }

    @Test
    void currenciesAreNeverMixed() {
        Money euro = Money.parse("EUR 1");
        assertThrows(CurrencyMismatchException.class, () -> euro.plus(Money.parse("USD 1")));
    }
}
