package org.cantonment.stock.reach;

import java.util.List;

import org.cantonment.stock.eras.FieldUnit;

/**
 * A billet, as a shelf sees it: so many units, each one of these.
 *
 * @param min at least so many
 * @param max at most so many, at least min; more than {@link #MOST} are not asked about
 * @param of the units that may stand in it
 */
public record Places(int min, int max, List<FieldUnit> of) {

    /** More units than any billet is filled with. */
    public static final int MOST = 40;

    /** @throws IllegalArgumentException unless 0 ≤ min ≤ max */
    public Places {
        if (min < 0 || max < min) {
            throw new IllegalArgumentException("A billet has from 0 places upwards, not " + min + " to " + max);
        }
        of = List.copyOf(of);
    }
}
