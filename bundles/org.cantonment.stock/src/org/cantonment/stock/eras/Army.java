package org.cantonment.stock.eras;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * The units of most points that a shelf can put on the table at once, whatever formations and limits say.
 *
 * @param side whose army it is; empty if its units are anybody's
 * @param points what its units cost together
 * @param bound no army costs more; more than the points only where the search was cut off
 * @param units its units, in the order of the books; units that need nothing from the shelf are left out
 */
public record Army(Optional<Id> side, int points, int bound, List<Fielded> units) {

    public Army {
        units = List.copyOf(units);
    }

    /** Whether there is none of more points. */
    public boolean proven() {
        return bound == points;
    }
}
