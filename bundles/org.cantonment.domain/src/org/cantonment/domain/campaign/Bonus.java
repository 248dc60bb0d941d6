package org.cantonment.domain.campaign;

import java.math.BigDecimal;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** Points for each so many of a tally, with a cap if it is said. */
public record Bonus(Id id, BigDecimal points, int per, Id tally, Optional<BigDecimal> most) {
}
