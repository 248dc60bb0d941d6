package org.cantonment.stock.turnout;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.supply.Supply;

/**
 * Somebody of an evening: a player with a list, one who stays at home and may lend, or the club with its box.
 *
 * @param needs what the list needs, its entries those of no other list; empty without a list
 * @param own what is there of theirs
 */
public record Party(Id who, List<Requirement> needs, Supply own) {

    public Party {
        needs = List.copyOf(needs);
    }
}
