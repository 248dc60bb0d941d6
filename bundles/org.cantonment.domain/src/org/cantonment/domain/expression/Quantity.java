package org.cantonment.domain.expression;

/** How many of somebody there are, or what they add up to, in some stretch of the list. */
public record Quantity(Measure measure, Selection of, Stretch in) implements Expression {

    /**
     * What: how many; how many different ones; points; strength. The last three hold the list against the one before:
     * how many units stayed, how many are gone, how many are new.
     */
    public enum Measure {
        COUNT, DIFFERENT, POINTS, STRENGTH, KEPT, GONE, ADDED
    }

    /**
     * Where: what the line is judged on, which is all under the rule set or one unit or formation that is being asked;
     * the whole list; the contingent; the campaign so far with this list; the list of the round before.
     */
    public enum Stretch {
        HERE, LIST, CONTINGENT, CAMPAIGN, LIST_BEFORE
    }

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
