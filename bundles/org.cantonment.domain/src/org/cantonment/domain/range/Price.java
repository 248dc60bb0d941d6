package org.cantonment.domain.range;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.joda.money.Money;

/** The maker's price for a box while it holds. */
public record Price(Id id, Money money, Validity when) {
}
