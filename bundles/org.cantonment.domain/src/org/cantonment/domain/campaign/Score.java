package org.cantonment.domain.campaign;

import java.math.BigDecimal;

/** Points for an outcome. */
public record Score(Reward reward, BigDecimal points) {
}
