package org.cantonment.domain.common;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;

import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Money out of text and into it. Sums are the money library's own; mixing currencies throws there. */
public final class Amounts {

    private Amounts() {
    }

    /** The currency of this ISO 4217 code, in small letters or capitals; empty if there is none. */
    public static Optional<CurrencyUnit> currency(String code) {
        try {
            return Optional.of(CurrencyUnit.of(code.toUpperCase(Locale.ROOT)));
        } catch (IllegalCurrencyException unknown) {
            return Optional.empty();
        }
    }

    /** The money, or empty if the amount has more decimals than the currency. */
    public static Optional<Money> money(CurrencyUnit currency, BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        if (stripped.scale() > currency.getDecimalPlaces()) {
            return Optional.empty();
        }
        return Optional.of(Money.of(currency, stripped.setScale(currency.getDecimalPlaces())));
    }

    /** The amount with all decimals of its currency, with a point and without the code: 24.50. */
    public static String text(Money money) {
        return money.getAmount().toPlainString();
    }
}
