package org.cantonment.desk.roundup;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Result;
import org.cantonment.domain.common.Id;

/**
 * A game that has been booked.
 *
 * @param week     the week it stands in
 * @param round    the round it belongs to, so far as that can be told
 * @param first    who is named first: the winner, unless it was drawn
 * @param second   the other
 * @param kind     how it ended
 * @param score    the score, the first player's own number first
 * @param on       the day it was played
 * @param disputed whether the two do not agree
 */
public record Booked(int week, OptionalInt round, Id first, Id second, Kind kind, Optional<Result> score,
        Optional<LocalDate> on, boolean disputed) {
    /** How a game ended. */
    public enum Kind {
        /** The first beat the second. */
        WON,
        /** Nobody won. */
        DRAWN,
        /** The second gave the game to the first unplayed. */
        FORFEITED
    }

    /** Whether it is a game of these two, in either order. */
    public boolean between(Id one, Id other) {
        return first.equals(one) && second.equals(other) || first.equals(other) && second.equals(one);
    }
}
