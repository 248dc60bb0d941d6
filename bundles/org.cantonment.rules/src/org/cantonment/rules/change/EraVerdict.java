package org.cantonment.rules.change;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.Verdict;

/**
 * What becomes of a list in one era.
 *
 * @param verdict what the judge says of the list as it is written
 * @param atLarge where that is not legal: the least change that makes it so
 * @param owned the least change after which the list is legal and can be fielded with what the player owns; empty where
 *        that is not known, or the list is both as it is written
 */
public record EraVerdict(Id era, Verdict verdict, Optional<Found> atLarge, Optional<Found> owned) {
}
