package org.cantonment.domain.expression;

/** Yes or no as written. */
public record YesNo(boolean yes) implements Expression {

    @Override
    public Type type() {
        return Type.YES_NO;
    }
}
