package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.expression.Expression;

/** The lines of the card hold only when this is so. */
public record Provided(Id id, Expression condition, Validity when) implements Fact {
}
