package org.cantonment.domain.range;

import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.joda.money.Money;

/**
 * A seller's offer of a box; without a count there is no end of them. The money is for one box where each is said,
 * else for all of them together.
 */
public record Offer(Id id, OptionalInt count, Id box, Money money, boolean each, Validity when) {
}
