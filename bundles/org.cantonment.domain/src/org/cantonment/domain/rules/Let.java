package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.expression.Expression;

/** A name for something that other lines of the card ask or work out. A later line of the same name replaces it. */
public record Let(Id id, String name, Expression expression, Validity when) implements Fact {
}
