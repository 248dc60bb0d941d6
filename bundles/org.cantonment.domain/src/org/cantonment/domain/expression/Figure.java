package org.cantonment.domain.expression;

/** A number as written. */
public record Figure(Ratio value) implements Expression {

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
