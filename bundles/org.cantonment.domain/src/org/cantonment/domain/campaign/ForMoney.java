package org.cantonment.domain.campaign;

import org.joda.money.Money;

/** For money. */
public record ForMoney(Money money) implements Exchange {
}
