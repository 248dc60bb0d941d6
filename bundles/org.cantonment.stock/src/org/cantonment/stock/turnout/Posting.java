package org.cantonment.stock.turnout;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.likeness.Truth;

/**
 * So many pieces that stand for a need.
 *
 * @param need the need, as it was asked
 * @param type the piece type that stands there
 * @param truth how true it is
 * @param line the line of likeness that lets it stand, for a stand-in
 */
public record Posting(Requirement need, Id type, int count, Truth truth, Optional<StandIn> line) {
}
