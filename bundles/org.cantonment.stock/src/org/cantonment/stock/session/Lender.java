package org.cantonment.stock.session;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Supply;

/**
 * Somebody who has pieces: a player of this evening, one who stays at home, or the club.
 *
 * @param who the player; the club has an id of the asker's choice
 * @param supply what is at hand
 */
public record Lender(Id who, Supply supply) {
}
