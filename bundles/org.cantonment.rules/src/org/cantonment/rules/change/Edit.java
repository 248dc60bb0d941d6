package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.finding.Action;

/**
 * One change of a list.
 *
 * @param moved the points it moves, at least 0
 * @param units the units it touches
 */
record Edit(List<Action> actions, long moved, int units) {
}
