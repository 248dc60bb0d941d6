package org.cantonment.stock.likeness;

import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/**
 * A line by which some types may stand for others, as far as it holds.
 *
 * @param line where it stands
 * @param percent of the pieces that the needs it serves ask for, rounded down, so many at most; empty for no end
 * @param leave whether the opponent's leave is needed
 */
public record StandIn(Id line, OptionalInt percent, boolean leave) {

    /** How many may stand by it where so many are asked for. */
    public int most(int asked) {
        return percent.isPresent() ? (int) ((long) asked * percent.getAsInt() / 100) : asked;
    }
}
