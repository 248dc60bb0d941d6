package org.cantonment.domain.expression;

import java.util.List;

/** Not so. */
public record Negation(Expression of) implements Expression {

    @Override
    public Type type() {
        return Type.YES_NO;
    }

    @Override
    public List<Expression> parts() {
        return List.of(of);
    }
}
