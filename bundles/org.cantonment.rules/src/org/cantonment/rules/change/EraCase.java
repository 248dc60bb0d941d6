package org.cantonment.rules.change;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * One era that a list is to be judged in.
 *
 * @param ruling the rules as they stand in it
 * @param situation what the list is judged in beside the rules; its token ends the search
 * @param owned what the player owns, if that is known
 */
public record EraCase(Id era, Ruling ruling, Situation situation, Optional<Fielding> owned) {
}
