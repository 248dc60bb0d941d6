package org.cantonment.buying.reach;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Purchase;
import org.cantonment.domain.finding.Finding;
import org.joda.money.Money;

/**
 * How much money a formation is away.
 *
 * @param total what the purchases cost, sending and discounts reckoned in; empty if nothing that can be had is enough, or
 *        nothing was found
 * @param purchases the purchases that make it fieldable
 * @param filling what then stands in it, which need not be the filling that lacks the fewest pieces
 * @param proven whether no purchases for any filling cost less; or, without a total, that there are none
 * @param why why there are none
 */
public record Cost(Optional<Money> total, List<Purchase> purchases, Optional<Filling> filling, boolean proven,
        List<Finding> why) {

    public Cost {
        purchases = List.copyOf(purchases);
        why = List.copyOf(why);
    }

    /** Nothing was found in time. */
    public static Cost unknown() {
        return new Cost(Optional.empty(), List.of(), Optional.empty(), false, List.of());
    }
}
