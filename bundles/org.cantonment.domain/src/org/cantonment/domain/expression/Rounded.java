package org.cantonment.domain.expression;

import java.util.List;

/** The next whole number above, or below. */
public record Rounded(Expression number, boolean up) implements Expression {

    /** The number rounded so. */
    public Ratio round(Ratio exact) {
        return up ? exact.up() : exact.down();
    }

    @Override
    public Type type() {
        return Type.NUMBER;
    }

    @Override
    public List<Expression> parts() {
        return List.of(number);
    }
}
