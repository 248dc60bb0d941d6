package org.cantonment.buying.plan;

import org.cantonment.buying.market.Ware;
import org.joda.money.Money;

/** So many of a ware in a stage; the sum is in the currency of account. */
public record Purchase(Ware ware, int count, int stage) {

    /** What they cost together, sending and discounts left aside. */
    public Money sum() {
        return ware.cost().multipliedBy(count);
    }
}
