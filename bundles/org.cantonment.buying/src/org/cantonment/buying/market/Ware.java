package org.cantonment.buying.market;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Supply;
import org.joda.money.Money;

/**
 * Something to be bought: one box, so many for one price, or a lot.
 *
 * @param line what says so: the offer, the lot, or the price of the box
 * @param box the box or the lot
 * @param boxes how many boxes one purchase is
 * @param code what the box is known by, for the order among equals
 * @param seller the seller, or the range whose maker sells it
 * @param price what one purchase costs in the seller's currency
 * @param cost the same in the currency of account
 * @param most how many purchases there are
 * @param load what one purchase brings
 * @param pieces how many pieces that is, where each part counts for the most it can be built as
 */
public record Ware(Id line, Id box, int boxes, String title, String code, Id seller, Money price, Money cost, int most,
        Supply load, int pieces) {
}
