package org.cantonment.desk.shopping;

import java.math.BigDecimal;
import java.util.Optional;

import org.cantonment.domain.common.Amounts;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Money in words and out of them. */
public final class Cash {
    private static final int LONGEST = 20;

    private Cash() {
    }

    /** "24.50 EUR". */
    public static String text(Money money) {
        return Amounts.text(money) + ' ' + money.getCurrencyUnit();
    }

    /** "saves 3.00 EUR", "costs 3.00 EUR more" or "saves nothing". */
    static String saving(Money money) {
        return money.isZero() ? "saves nothing" : money.isPositive() ? "saves " + text(money)
                : "costs " + text(money.negated()) + " more";
    }

    /**
     * An amount as a person types it: "24.50", or "24.50 EUR".
     *
     * @param account the currency that is meant where none is said
     * @throws Unclear if it is no amount, or below nothing, or in another currency, or has too many decimals
     */
    public static Money read(String text, CurrencyUnit account) throws Unclear {
        String[] words = text.strip().split("\\s+");
        if (words.length == 2 && !words[1].equalsIgnoreCase(account.getCode())) {
            throw new Unclear("'" + text + "' is in another currency than " + account + ", in which this is reckoned.");
        }
        Optional<Money> money = words.length > 2 || words[0].length() > LONGEST || !words[0].matches("[0-9]+([.][0-9]+)?")
                ? Optional.empty() : Amounts.money(account, new BigDecimal(words[0]));
        return money.filter(one -> one.getAmount().precision() - one.getAmount().scale() <= LONGEST / 2)
                .orElseThrow(() -> new Unclear("'" + text + "' is no amount of money; write it like 24.50, with at most "
                        + account.getDecimalPlaces() + " decimals."));
    }
}
