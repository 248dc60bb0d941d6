package org.cantonment.stock.ledger;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Supply;

/**
 * What lies where.
 *
 * @param piles what lies on each shelf, by the shelf's id; a player without a shelf who came by something has a pile of
 *         his own id
 * @param owners whose each pile is; nobody's is the club's
 * @param loans what has been lent and has not come back, in the order of the lines that say so
 * @param findings where shelves and deeds cannot be as they were written
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

    /**
     * The same when somebody has lent something for an evening; what nobody knows of is taken on trust.
     *
     * @param lender who lends; the club if empty
     */
    public Inventory lending(Catalogue catalogue, Borrowing borrowing, Optional<Id> lender, Id borrower, Id what) {
        Map<Id, Supply> after = new TreeMap<>(piles);
        int left = borrowing.trusted() ? 0 : borrowing.come();
        for (Id pile : ownFirst(lender)) {
            Pile from = new Pile(catalogue, after.getOrDefault(pile, Supply.NONE));
            int here = Math.min(left, from.has(what));
            from.take(what, here);
            after.put(pile, from.supply());
            left -= here;
        }
        Map<Id, Set<Id>> whose = new TreeMap<>(owners);
        List<Id> his = ownFirst(Optional.of(borrower));
        Id to = his.isEmpty() ? borrower : his.get(0);
        whose.putIfAbsent(to, Set.of(borrower));
        after.merge(to, borrowing.supply(), Supply::plus);
        return new Inventory(after, whose, loans, findings);
    }

    private List<Id> ownFirst(Optional<Id> who) {
        return owners.keySet().stream().filter(pile -> who.map(owners.get(pile)::contains)
                .orElse(owners.get(pile).isEmpty())).sorted(Comparator.comparingInt((Id pile) -> owners.get(pile).size())
                        .thenComparing(pile -> pile)).toList();
    }

    /** What a player has lent to others. */
    public List<Loan> lentBy(Id player) {
        return loans.stream().filter(loan -> loan.owner().equals(player)).toList();
    }
}
