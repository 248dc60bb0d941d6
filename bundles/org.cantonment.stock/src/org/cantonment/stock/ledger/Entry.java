package org.cantonment.stock.ledger;

import java.time.LocalDate;

import org.cantonment.domain.campaign.Deed;

/**
 * A deed as it is known, on its day.
 *
 * @param deed the deed, without the deeds within it
 * @param game the game that it belongs to; null if to none
 */
record Entry(int week, LocalDate day, Deed deed, Deed game) {
}
