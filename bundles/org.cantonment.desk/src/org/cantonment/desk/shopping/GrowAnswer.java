package org.cantonment.desk.shopping;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.plan.Plan;

/**
 * What to buy before which round.
 *
 * @param shopper for whom
 * @param shops   where
 * @param steps   the rounds, in their order
 * @param saved   whether what is left of a budget may be spent later
 * @param why     who says what may be spent, in words
 * @param growth  the plan, or what it is short of; empty if for some round no legal list was found
 * @param without the rounds for which none was found
 * @param stopped whether the search was ended before it was through
 */
public record GrowAnswer(Shopper shopper, Shops shops, List<Step> steps, boolean saved, String why, Optional<Growth> growth,
        List<Step> without, boolean stopped) {
    public GrowAnswer {
        steps = List.copyOf(steps);
        without = List.copyOf(without);
    }

    /** The plan, if there is one. */
    public Optional<Plan> plan() {
        return growth.flatMap(one -> one.answer().plan());
    }

    /** Whether any list was composed. */
    public boolean composed() {
        return steps.stream().anyMatch(Step::composed);
    }

    /** Whether there is a plan, and all its lists are legal. */
    public boolean complete() {
        return plan().isPresent() && steps.stream().allMatch(step -> step.breaches().isEmpty());
    }
}
