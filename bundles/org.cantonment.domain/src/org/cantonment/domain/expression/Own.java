package org.cantonment.domain.expression;

/** Something about the one unit or formation that is being asked. */
public record Own(What what) implements Expression {

    /** Its strength, the points of one with all that stands in it, how many options it takes. */
    public enum What {
        STRENGTH, POINTS, OPTIONS
    }

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
