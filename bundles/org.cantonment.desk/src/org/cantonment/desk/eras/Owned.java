package org.cantonment.desk.eras;

import java.util.Optional;
import java.util.function.Function;

import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.view.Ruling;

/**
 * What somebody owns, to field lists with.
 *
 * @param who      whose it is: "Ombra", or "this shelf"; empty if nobody's is known
 * @param why      if nobody's is known, why, as a whole sentence; else empty
 * @param fielding what can be fielded under a ruling
 */
public record Owned(String who, String why, Function<Ruling, Fielding> fielding) {

    /** Nothing is known of what is owned. */
    public static Owned unknown(String why) {
        return new Owned("", why, ruling -> Fielding.ALL);
    }

    /** Whether anything is known. */
    public boolean known() {
        return why.isEmpty();
    }

    /** What can be fielded under a ruling; empty if nothing is known. */
    public Optional<Fielding> in(Ruling ruling) {
        return known() ? Optional.of(fielding.apply(ruling)) : Optional.empty();
    }
}
