package org.cantonment.buying.market;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Occasion;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The rates that hold on a day. An amount is turned exactly and then rounded half up to the least unit of its currency. */
public final class Rates {

    private final List<Rate> rates;
    private final CurrencyUnit account;

    private Rates(List<Rate> rates, CurrencyUnit account) {
        this.rates = List.copyOf(rates);
        this.account = account;
    }

    /** Those of the rates that hold on a day, into a currency. Of two for the same pair the one written last is meant. */
    public static Rates on(Collection<Rate> rates, LocalDate day, CurrencyUnit account) {
        return new Rates(rates.stream().filter(rate -> rate.when().covers(Occasion.on(day), EraOrder.NONE)).toList(),
                account);
    }

    /** The currency that amounts are turned into. */
    public CurrencyUnit account() {
        return account;
    }

    /** The amount in the currency of account; empty if no rate says. */
    public Optional<Money> turn(Money money) {
        if (money.getCurrencyUnit().equals(account)) {
            return Optional.of(money);
        }
        for (int i = rates.size() - 1; i >= 0; i--) {
            Money one = rates.get(i).one();
            Money other = rates.get(i).other();
            if (fits(one, money) && other.getCurrencyUnit().equals(account)) {
                return Optional.of(turned(money, one, other));
            }
            if (fits(other, money) && one.getCurrencyUnit().equals(account)) {
                return Optional.of(turned(money, other, one));
            }
        }
        return Optional.empty();
    }

    private static boolean fits(Money side, Money money) {
        return side.isPositive() && side.getCurrencyUnit().equals(money.getCurrencyUnit());
    }

    private Money turned(Money money, Money from, Money to) {
        BigDecimal amount = money.getAmount().multiply(to.getAmount())
                .divide(from.getAmount(), account.getDecimalPlaces(), RoundingMode.HALF_UP);
        return Money.of(account, amount);
    }
}
