package org.cantonment.rules.compile;

import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Fact;

/**
 * A line that holds, and who says it.
 *
 * @param book the number of its book, lower books first
 * @param direction what the change it stands in claims to do; CHANGE for the card's own lines
 * @param own whether it stands on the card itself and not in a change
 * @param closeness how closely its time is meant
 */
record Said<T extends Fact>(T fact, int book, Direction direction, boolean own, int closeness) {

    /** Whether this stands before another of the same key. */
    boolean outranks(Said<?> other) {
        return book != other.book ? book > other.book : closeness > other.closeness;
    }
}
