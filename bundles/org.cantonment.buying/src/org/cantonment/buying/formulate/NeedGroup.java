package org.cantonment.buying.formulate;

import java.util.Map;
import java.util.Set;

import org.cantonment.domain.common.Id;

/**
 * Needs of a list that the very same may fill.
 *
 * @param exact the types that stand there for themselves
 * @param free the types that may stand there without a share to keep to; the exact ones are among them
 * @param shared the types that may stand there by a line with a share, by the number of the line in the allowance
 */
record NeedGroup(int count, Set<Id> exact, Set<Id> free, Map<Integer, Set<Id>> shared) {
}
