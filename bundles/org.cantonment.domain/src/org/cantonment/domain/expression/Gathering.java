package org.cantonment.domain.expression;

import java.util.List;

/** Something asked of each that is meant here, one by one, and put together. */
public record Gathering(Act act, Selection over, Expression body) implements Expression {

    /** How: whether all have it, whether any has, how many have; the sum, the greatest or the least of all. */
    public enum Act {
        EACH, ANY, COUNT, SUM, GREATEST, LEAST
    }

    @Override
    public Type type() {
        return act == Act.EACH || act == Act.ANY ? Type.YES_NO : Type.NUMBER;
    }

    @Override
    public List<Expression> parts() {
        return List.of(body);
    }
}
