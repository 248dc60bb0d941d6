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
 * @param shelves what is there already: one shelf for each person who orders; nobody uses what is on another's
 * @param targets what must stand; each in one of the stages
 * @param stages when can be bought; at least one
 * @param saved whether what a stage leaves of its budget may be spent later
 * @param atLeast boxes that are bought in any case, and how many
 */
public record Question(Market market, List<Supply> shelves, List<Target> targets, List<Stage> stages, boolean saved,
        Map<Id, Integer> atLeast) {

    /** @throws IllegalArgumentException if a target stands in a stage that is not there, or is of a person without a shelf */
    public Question {
        shelves = List.copyOf(shelves);
        targets = List.copyOf(targets);
        stages = List.copyOf(stages);
        atLeast = Map.copyOf(atLeast);
        for (Target target : targets) {
            if (target.stage() >= stages.size() || target.person() >= shelves.size()) {
                throw new IllegalArgumentException(target.title() + " of person " + target.person() + " stands in stage "
                        + target.stage() + "; there are " + shelves.size() + " shelves and " + stages.size() + " stages");
            }
        }
    }

    /** One person's. */
    public Question(Market market, Supply shelf, List<Target> targets, List<Stage> stages, boolean saved,
            Map<Id, Integer> atLeast) {
        this(market, List.of(shelf), targets, stages, saved, atLeast);
    }

    /** Several people's order, all at once, no end of money. */
    public static Question together(Market market, List<Supply> shelves, List<Target> targets) {
        return new Question(market, shelves, targets, List.of(Stage.OPEN), false, Map.of());
    }

    /** All at once, no end of money. */
    public static Question of(Market market, Supply shelf, List<Target> targets) {
        return new Question(market, shelf, targets, List.of(Stage.OPEN), false, Map.of());
    }

    /** Whether there is an end of time at the bench in any stage. */
    public boolean benched() {
        return stages.stream().anyMatch(stage -> stage.bench().isPresent());
    }

    /** The same with another market. */
    public Question with(Market other) {
        return new Question(other, shelves, targets, stages, saved, atLeast);
    }

    /** The same with other targets. */
    public Question with(List<Target> others) {
        return new Question(market, shelves, others, stages, saved, atLeast);
    }

    /** The same with other stages. */
    public Question with(List<Stage> others, boolean savedUp) {
        return new Question(market, shelves, targets, others, savedUp, atLeast);
    }

    /** The same where these boxes are bought in any case. */
    public Question buying(Map<Id, Integer> boxes) {
        return new Question(market, shelves, targets, stages, saved, boxes);
    }
}
