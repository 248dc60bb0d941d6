package org.cantonment.domain.shelf;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/** Something on the shelf that no range knows. */
public record Oddment(Id id, int count, String text, Optional<Money> worth) {
}
