package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** What each may spend for a round, and whether what is left is saved up. */
public record RoundBudget(Id id, Money money, boolean saved) {
}
