package org.cantonment.domain.common;

/**
 * A number from min to max, both included.
 *
 * @param min at least 0
 * @param max at least min; {@link #UNBOUNDED} where there is no upper end
 */
public record Span(int min, int max) {

    /** More than any count that is accepted. */
    public static final int UNBOUNDED = 1_000_000;

    /** @throws IllegalArgumentException unless 0 ≤ min ≤ max */
    public Span {
        if (min < 0 || max < min) {
            throw new IllegalArgumentException("A span runs upwards from 0, not from " + min + " to " + max);
        }
    }

    /** Exactly so many. */
    public static Span exactly(int count) {
        return new Span(count, count);
    }

    /** None or more, up to so many. */
    public static Span atMost(int max) {
        return new Span(0, max);
    }

    /** So many or more. */
    public static Span atLeast(int min) {
        return new Span(min, UNBOUNDED);
    }

    /** From min to max. */
    public static Span of(int min, int max) {
        return new Span(min, max);
    }

    /** Whether there is an upper end. */
    public boolean bounded() {
        return max < UNBOUNDED;
    }

    /** Whether the count lies in it. */
    public boolean holds(long count) {
        return count >= min && (count <= max || !bounded());
    }

    /** "2", "2 to 3", "at most 3" or "at least 2". */
    @Override
    public String toString() {
        if (min == max) {
            return Integer.toString(min);
        }
        if (!bounded()) {
            return "at least " + min;
        }
        return min == 0 ? "at most " + max : min + " to " + max;
    }
}
