package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * A unit that may be taken.
 *
 * @param sides whose it is; empty for anybody's
 * @param steps the strengths it may have, the least first; two are enough, the least and the most
 */
public record FieldUnit(Id unit, List<Id> sides, List<Step> steps) {

    /** @throws IllegalArgumentException if there is no strength */
    public FieldUnit {
        sides = List.copyOf(sides);
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException(unit + " has no strength");
        }
    }
}
