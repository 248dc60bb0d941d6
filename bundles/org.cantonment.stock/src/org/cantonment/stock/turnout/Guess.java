package org.cantonment.stock.turnout;

import org.cantonment.domain.common.Id;

/** So many pieces of this type, or out of these parts, that a turnout counts on and that are only guessed. */
public record Guess(Id what, int pieces) {
}
