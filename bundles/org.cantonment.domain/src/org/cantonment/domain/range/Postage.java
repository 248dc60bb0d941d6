package org.cantonment.domain.range;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** What sending costs, and the value of goods from which it is free. */
public record Postage(Id id, Money money, Optional<Money> freeFrom) {
}
