package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.joda.money.Money;

/** What money in one currency is in another while it holds. */
public record Rate(Id id, Money one, Money other, Validity when) {
}
