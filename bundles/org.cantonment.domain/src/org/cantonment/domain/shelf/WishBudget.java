package org.cantonment.domain.shelf;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** What may be spent, in all or in each round, and whether what is left is saved up. */
public record WishBudget(Id id, Money money, boolean perRound, boolean saved) {
}
