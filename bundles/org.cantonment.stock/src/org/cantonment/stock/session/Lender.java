package org.cantonment.stock.session;

import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Supply;

/**
 * Somebody who has pieces: a player of this evening, one who stays at home, the club, or several who share a shelf.
 *
 * @param who the player; others have an id of the asker's choice
 * @param supply what is at hand
 * @param sharing the players of the evening whose it is together: what they take is not lent. None for what is one's own
 */
public record Lender(Id who, Supply supply, Set<Id> sharing) {

    public Lender {
        sharing = Set.copyOf(sharing);
    }

    /** Somebody with what is his own. */
    public Lender(Id who, Supply supply) {
        this(who, supply, Set.of());
    }
}
