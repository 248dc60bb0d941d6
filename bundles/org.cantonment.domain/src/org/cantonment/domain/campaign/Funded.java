package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** Earned into a fund, or spent from it. */
public record Funded(boolean earned, int amount, Id fund) implements Doing {
}
