package org.cantonment.buying.market;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/**
 * On what terms somebody sells. What an order must reach is reckoned in the seller's own prices, before discount.
 *
 * @param postage what sending an order costs, in the currency of account; empty for nothing
 * @param freeFrom the goods from which sending is free, in the seller's currency
 * @param discounts what is taken off, of which an order gets the one that takes off most
 * @param days until what was ordered is there; empty if nobody says, which counts as at once
 */
public record Terms(Id seller, String title, Optional<Money> postage, Optional<Money> freeFrom, List<Reduction> discounts,
        OptionalInt days) {

    /**
     * Percent off the goods, rounded down to the currency's least unit.
     *
     * @param from the goods from which it is given, in the seller's currency
     */
    public record Reduction(Id line, int percent, Optional<Money> from) {
    }

    public Terms {
        discounts = List.copyOf(discounts);
    }

    /** Whether it matters how much is ordered at once. */
    public boolean plain() {
        return postage.isEmpty() && discounts.isEmpty();
    }
}
