package org.cantonment.stock.likeness;

import java.util.Optional;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.rules.Level;

/**
 * For when likeness is asked about, and how much of it is wanted.
 *
 * @param occasion the era, round, week and day, so far as they are known
 * @param eras which era follows which
 * @param ceiling nothing less true than this is wanted; empty if whatever is allowed is
 * @param leave whether the opponent's leave may be counted on
 */
public record Terms(Occasion occasion, EraOrder eras, Optional<Level> ceiling, boolean leave) {

    /** All that is allowed at no time in particular, leave counted on. */
    public static final Terms ANY = new Terms(Occasion.UNKNOWN, EraOrder.NONE, Optional.empty(), true);

    /** All that is allowed then, leave counted on. */
    public static Terms at(Occasion occasion, EraOrder eras) {
        return new Terms(occasion, eras, Optional.empty(), true);
    }

    /** The same, but nothing less true than this. */
    public Terms noLessThan(Level level) {
        return new Terms(occasion, eras, Optional.of(level), leave);
    }

    /** The same, leave not counted on. */
    public Terms withoutLeave() {
        return new Terms(occasion, eras, ceiling, false);
    }
}
