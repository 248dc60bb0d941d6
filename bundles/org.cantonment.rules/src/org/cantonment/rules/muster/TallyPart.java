package org.cantonment.rules.muster;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * One part of what a line costs.
 *
 * @param words what it is for: "strength 5", "2 Long guns", "dearer beyond 1"
 * @param points for all of the line together
 * @param rule the line that prices it
 */
public record TallyPart(String words, long points, Optional<Id> rule) {
}
