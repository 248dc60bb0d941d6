package org.cantonment.domain.expression;

import java.util.List;

/** All of these, or any of these; two at least. */
public record Logic(boolean all, List<Expression> parts) implements Expression {

    public Logic {
        parts = List.copyOf(parts);
    }

    @Override
    public Type type() {
        return Type.YES_NO;
    }
}
