package org.cantonment.references;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;

/**
 * A rule set of one book, and a list written under it.
 *
 * @param eras in order, each after the one before
 * @param written the number of the era that the list was written for
 * @param points the limit
 */
public record Trial(RuleSet book, List<Id> eras, int written, ForceList list, int points) {
}
