package org.cantonment.domain.expression;

/** What stands fixed while a list is judged. */
public record Given(What what) implements Expression {

    /** The number of the round, the limit of points, the points that the list uses. */
    public enum What {
        ROUND, LIMIT, POINTS_USED
    }

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
