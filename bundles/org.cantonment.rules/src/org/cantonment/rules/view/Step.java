package org.cantonment.rules.view;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Need;

/**
 * Strengths that a unit may be taken at, from..to, and what they cost.
 *
 * @param base points of the unit itself, whatever its strength
 */
public record Step(int from, int to, int base, Cost cost, List<Need> needs, Id rule) {

    /** Whether the strength lies in it. */
    public boolean holds(int strength) {
        return strength >= from && strength <= to;
    }

    /** The points of a unit of this strength. */
    public long points(int strength) {
        return base + cost.times(strength);
    }

    /** The least strength in it that is worth so many points; -1 if none is. */
    public int firstWorth(long wanted) {
        if (points(from) >= wanted) {
            return from;
        }
        if (!cost.each() || cost.points() <= 0 || points(to) < wanted) {
            return -1;
        }
        return (int) ((wanted - base + cost.points() - 1) / cost.points());
    }

    /** The greatest strength in it that costs no more than so many points; -1 if none does. */
    public int lastWithin(long points) {
        if (points(to) <= points) {
            return to;
        }
        if (!cost.each() || cost.points() <= 0 || points(from) > points) {
            return -1;
        }
        return (int) ((points - base) / cost.points());
    }

    /** "5", or "2 to 4". */
    public String words() {
        return from == to ? Integer.toString(from) : from + " to " + to;
    }
}
