package org.cantonment.notation.reading;

import java.util.Optional;

import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Type;
import org.cantonment.model.ruleset.Let;

/** What a name given with 'let' is worth, for whoever only wants to show it. */
public final class LetType {

    private LetType() {
    }

    /**
     * @param let a line; the names that it leans on are looked up if they have not been yet
     * @return its type; empty if it cannot be worked out, which is a finding at the line
     */
    public static Optional<Type> of(Let let) {
        return new ExpressionReader(new Reading("")).named(let).map(Expression::type);
    }
}
