package org.cantonment.domain.rules;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.expression.Expression;

/**
 * Costs so many points more or fewer, for what else is in the list.
 *
 * @param cheaper whether it takes points off
 * @param amount a number of points
 * @param each whether for each one of its strength
 * @param condition when; always if nothing is said
 */
public record Surcharge(Id id, boolean cheaper, Expression amount, boolean each, Optional<Expression> condition,
        Validity when) implements Fact {
}
