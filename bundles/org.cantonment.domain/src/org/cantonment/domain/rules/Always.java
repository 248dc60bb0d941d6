package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.expression.Expression;

/** What must be so, said as an expression that is a yes or no. */
public record Always(Id id, Expression expression, Validity when) implements Fact {
}
