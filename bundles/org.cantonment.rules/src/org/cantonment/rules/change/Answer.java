package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.finding.Action;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Verdict;

/**
 * A change that makes a list legal.
 *
 * @param actions what to do, in order
 * @param moved the points moved: removed at the price written plus added at the new one; a unit that only gets another
 *        strength moves the difference
 * @param units the units touched
 * @param after the list as changed
 * @param verdict what the judge says of it
 */
public record Answer(List<Action> actions, long moved, int units, ForceList after, Verdict verdict) {

    public Answer {
        actions = List.copyOf(actions);
    }
}
