package org.cantonment.stock.ledger;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.stock.supply.Supply;

/**
 * What lies where.
 *
 * @param piles what lies on each shelf, by the shelf's id; a player without a shelf who came by something has a pile of
 *         his own id
 * @param owners whose each pile is; nobody's is the club's
 * @param loans what has been lent and has not come back, in the order of the lines that say so
 * @param findings where deeds cannot be as they were written
 */
public record Inventory(Map<Id, Supply> piles, Map<Id, Set<Id>> owners, List<Loan> loans, List<Finding> findings) {

    public Inventory {
        piles = Collections.unmodifiableMap(new TreeMap<>(piles));
        owners = Collections.unmodifiableMap(new TreeMap<>(owners));
        loans = List.copyOf(loans);
        findings = List.copyOf(findings);
    }

    /** All that a player has at hand, shared shelves included, what others lent him too. */
    public Supply of(Id player) {
        return together(owners.keySet().stream().filter(pile -> owners.get(pile).contains(player)).toList());
    }

    /** What is in the club's box. */
    public Supply club() {
        return together(owners.keySet().stream().filter(pile -> owners.get(pile).isEmpty()).toList());
    }

    /** What lies on these shelves. */
    public Supply together(Collection<Id> shelves) {
        Supply all = Supply.NONE;
        for (Id shelf : new TreeSet<>(shelves)) {
            all = all.plus(piles.getOrDefault(shelf, Supply.NONE));
        }
        return all;
    }

    /** What a player has lent to others. */
    public List<Loan> lentBy(Id player) {
        return loans.stream().filter(loan -> loan.owner().equals(player)).toList();
    }
}
