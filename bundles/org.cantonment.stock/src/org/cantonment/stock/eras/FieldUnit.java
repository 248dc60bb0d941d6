package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * A unit that may be taken.
 *
 * @param sides whose it is; empty for anybody's
 * @param most no army has more of it; {@link UnitAnswer#ENDLESS} where nothing says so
 * @param steps the strengths it may have, the least first; two are enough, the least and the most
 */
public record FieldUnit(Id unit, List<Id> sides, int most, List<Step> steps) {

    /** @throws IllegalArgumentException if there is no strength */
    public FieldUnit {
        sides = List.copyOf(sides);
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException(unit + " has no strength");
        }
    }

    /** The same with no end to how many there may be. */
    public FieldUnit(Id unit, List<Id> sides, List<Step> steps) {
        this(unit, sides, UnitAnswer.ENDLESS, steps);
    }
}
