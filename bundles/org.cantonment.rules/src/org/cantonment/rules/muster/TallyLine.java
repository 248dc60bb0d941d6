package org.cantonment.rules.muster;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * What one entry costs, without what stands in it.
 *
 * @param count how many of it there are in the whole list
 * @param points for all of them; the sum of the parts
 */
public record TallyLine(Id entry, String title, long count, long points, List<TallyPart> parts) {
}
