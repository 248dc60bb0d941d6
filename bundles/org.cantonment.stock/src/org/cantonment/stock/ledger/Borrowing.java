package org.cantonment.stock.ledger;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;

/**
 * What a player borrows for one list, beside what was lent already. What the lender has never counted is not counted on.
 *
 * @param supply what comes of it
 * @param asked how many were asked for
 * @param come how many the lender can spare
 * @param trusted whether the lender's shelf is not known, so that they are taken on trust, as guessed
 */
public record Borrowing(Supply supply, int asked, int come, boolean trusted) {

    /**
     * Borrows.
     *
     * @param lender who lends; the club if empty
     * @param count how many are to be there in all, those on loan already included
     */
    public static Borrowing of(Catalogue catalogue, Inventory inventory, Optional<Id> lender, Id borrower, Id what, int count) {
        int lent = inventory.loans().stream().filter(loan -> lender.equals(Optional.of(loan.owner()))
                && loan.holder().equals(Optional.of(borrower)) && loan.what().equals(what)).mapToInt(Loan::count).sum();
        int asked = Math.max(0, count - lent);
        boolean known = inventory.owners().values().stream().anyMatch(owners -> lender.map(owners::contains)
                .orElse(owners.isEmpty()));
        if (!known) {
            Supply all = Pile.things(catalogue, what, asked, Optional.empty());
            return new Borrowing(new Supply(all.stacks().stream().map(one -> new Stack(one.what(), 0, one.counted(),
                    one.unknown())).toList(), all.frames(), all.caps(), all.findings()), asked, asked, true);
        }
        Pile pile = new Pile(catalogue, lender.map(inventory::of).orElseGet(inventory::club));
        int come = Math.min(asked, pile.has(what) - pile.uncounted(what));
        return new Borrowing(pile.take(what, come), asked, come, false);
    }
}
