package org.cantonment.rules.muster;

import java.util.List;

/**
 * What a list costs.
 *
 * @param points the total; the sum of the lines
 * @param lines one for each entry, in the order of the list
 * @param unpriced whether some unit in it has no price in the rules
 */
public record Tally(long points, List<TallyLine> lines, boolean unpriced) {
}
