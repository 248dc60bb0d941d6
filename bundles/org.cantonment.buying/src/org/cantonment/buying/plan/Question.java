package org.cantonment.buying.plan;

import java.util.List;
import java.util.Map;

import org.cantonment.buying.market.Market;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Supply;

/**
 * What is asked of the planner.
 *
 * @param market what can be had
 * @param shelf what is there already
 * @param targets what must stand; each in one of the stages
 * @param stages when can be bought; at least one
 * @param saved whether what a stage leaves of its budget may be spent later
 * @param atLeast boxes that are bought in any case, and how many
 */
public record Question(Market market, Supply shelf, List<Target> targets, List<Stage> stages, boolean saved,
        Map<Id, Integer> atLeast) {

    /** @throws IllegalArgumentException if a target stands in a stage that is not there */
    public Question {
        targets = List.copyOf(targets);
        stages = List.copyOf(stages);
        atLeast = Map.copyOf(atLeast);
        for (Target target : targets) {
            if (target.stage() >= stages.size()) {
                throw new IllegalArgumentException(target.title() + " stands in stage " + target.stage() + " of "
                        + stages.size());
            }
        }
    }

    /** All at once, no end of money. */
    public static Question of(Market market, Supply shelf, List<Target> targets) {
        return new Question(market, shelf, targets, List.of(Stage.OPEN), false, Map.of());
    }

    /** The same with another market. */
    public Question with(Market other) {
        return new Question(other, shelf, targets, stages, saved, atLeast);
    }

    /** The same with other targets. */
    public Question with(List<Target> others) {
        return new Question(market, shelf, others, stages, saved, atLeast);
    }

    /** The same with other stages. */
    public Question with(List<Stage> others, boolean savedUp) {
        return new Question(market, shelf, targets, others, savedUp, atLeast);
    }

    /** The same where these boxes are bought in any case. */
    public Question buying(Map<Id, Integer> boxes) {
        return new Question(market, shelf, targets, stages, saved, boxes);
    }
}
