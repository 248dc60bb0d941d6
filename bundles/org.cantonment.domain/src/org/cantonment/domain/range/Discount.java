package org.cantonment.domain.range;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.joda.money.Money;

/** Percent off the goods, from a value of goods if one is said. */
public record Discount(Id id, int percent, Optional<Money> from, Validity when) {
}
