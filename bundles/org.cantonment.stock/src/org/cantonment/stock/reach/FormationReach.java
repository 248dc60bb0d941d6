package org.cantonment.stock.reach;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * How far a shelf is from a formation.
 *
 * @param least with the fewest units there must be, each at its least strength; empty if a billet that must be filled has
 *        no unit
 * @param most with the most units there may be, each at its greatest strength; billets without a unit stay empty
 */
public record FormationReach(Id formation, Optional<Near> least, Optional<Near> most) {
}
