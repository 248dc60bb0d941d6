package org.cantonment.buying.formulate;

/**
 * How many there are of something.
 *
 * @param least from 0
 */
public record Between(long least, long most) {

    /** None or more. */
    public static final Between ANY = new Between(0, Long.MAX_VALUE);

    /** The same, but no fewer than these. */
    public Between atLeast(long other) {
        return new Between(Math.max(least, other), most);
    }

    /** The same, but no more than these. */
    public Between atMost(long other) {
        return new Between(least, Math.min(most, other));
    }
}
