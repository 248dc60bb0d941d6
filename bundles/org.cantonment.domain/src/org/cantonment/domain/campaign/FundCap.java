package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The most that may be spent from a fund in one round. */
public record FundCap(Id id, int amount, Id fund, Validity when) {
}
