package org.cantonment.desk.roundup;

import java.math.BigDecimal;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * How a player has fared.
 *
 * @param points what the campaign's scoring gives for it; empty where the campaign states none
 */
public record Standing(Id player, int won, int drawn, int lost, Optional<BigDecimal> points) {
    /** Games played or forfeited. */
    public int played() {
        return won + drawn + lost;
    }
}
