package org.cantonment.domain.rules;

/** Points: for the whole, or for each one of it. */
public record Cost(int points, boolean each) {

    /** The points of so many. */
    public long times(int count) {
        return each ? (long) points * count : points;
    }
}
