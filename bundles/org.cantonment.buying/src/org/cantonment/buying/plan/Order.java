package org.cantonment.buying.plan;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** What is ordered at once from one seller: goods, what sending them costs, and what is taken off for a discount. */
public record Order(Id seller, String title, int stage, Money goods, Money sending, Money off) {

    /** What is paid. */
    public Money total() {
        return goods.plus(sending).minus(off);
    }
}
