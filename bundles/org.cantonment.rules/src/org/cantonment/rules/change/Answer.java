package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.finding.Action;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Verdict;

/**
 * A change that makes a list legal.
 *
 * @param actions what to do, in order
 * @param moved the points moved: removed at the price in the list as written, plus added at the price in the changed list,
 *        both with what formulas add; a unit that only gets another strength or other options moves the difference that
 *        these make by themselves; one that stays as it is moves nothing, even if a formula changes its price
 * @param units the units touched
 * @param after the list as changed
 * @param verdict what the judge says of it
 */
public record Answer(List<Action> actions, long moved, int units, ForceList after, Verdict verdict) {

    public Answer {
        actions = List.copyOf(actions);
    }
}
