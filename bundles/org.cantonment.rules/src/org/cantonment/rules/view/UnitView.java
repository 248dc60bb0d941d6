package org.cantonment.rules.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Successor;

/**
 * A unit at this time.
 *
 * @param steps its strengths, the higher layers' and the narrower first, never empty
 * @param priced whether anything says what it costs
 * @param options by name, in the order of the text
 * @param pastOptions names of options that it has at other times only, with the line that says them
 */
public record UnitView(Id id, String title, int index, Set<Id> kinds, Set<Id> sides, Permission permission,
        List<Step> steps, boolean priced, Map<String, OptionView> options, Map<String, Id> pastOptions,
        List<Needs> needs, List<Dearer> dearer, List<SurchargeView> surcharges, Optional<Successor> successor) implements Choice {

    /** The step for a strength, or null if it is not offered. */
    public Step step(int strength) {
        for (Step step : steps) {
            if (step.holds(strength)) {
                return step;
            }
        }
        return null;
    }

    /** The least strength that it may be taken at. */
    public int leastStrength() {
        int least = Integer.MAX_VALUE;
        for (Step step : steps) {
            least = Math.min(least, step.from());
        }
        return least;
    }

    /** The offered strength next to this one; of two as near, the lower. */
    public int nearestStrength(int wanted) {
        int best = leastStrength();
        for (Step step : steps) {
            int near = Math.max(step.from(), Math.min(step.to(), wanted));
            int gap = Math.abs(near - wanted) - Math.abs(best - wanted);
            if (gap < 0 || gap == 0 && near < best) {
                best = near;
            }
        }
        return best;
    }

    /** The strength with the least points that are at least so many; -1 if there is none. */
    public int strengthWorth(long wanted) {
        int best = -1;
        for (Step step : steps) {
            int strength = step.firstWorth(wanted);
            if (strength > 0 && step(strength) == step && (best < 0 || step.points(strength) < points(best))) {
                best = strength;
            }
        }
        return best;
    }

    /** The points of one at a strength that is offered, without options. */
    public long points(int strength) {
        return step(strength).points(strength);
    }

    @Override
    public long leastPoints() {
        return points(leastStrength());
    }
}
