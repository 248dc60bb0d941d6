package org.cantonment.desk.turnout;

import java.util.List;

import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Borrow;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Content;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.Borrowing;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.supply.Supply;

/** What lists say that they borrow. */
final class Borrowed {
    private final Catalogue catalogue;
    private final Meanings meanings;

    Borrowed(Catalogue catalogue, Meanings meanings) {
        this.catalogue = catalogue;
        this.meanings = meanings;
    }

    /** What comes of it for one list, whatever others borrow; says what does not come, and what is taken on trust. */
    Supply of(ForceList list, Inventory inventory, List<String> remarks) {
        Supply all = Supply.NONE;
        for (Borrow borrow : list.borrowed()) {
            for (Content thing : borrow.things()) {
                Borrowing borrowing = borrowing(list, borrow, thing, inventory);
                all = all.plus(borrowing.supply());
                remark(borrow, thing, borrowing, remarks);
            }
        }
        return all;
    }

    /** The inventory when the lists of an evening have, one after another, what they borrow; says so of each. */
    Inventory handedOver(List<ForceList> lists, Inventory inventory, List<String> promised) {
        Inventory after = inventory;
        for (ForceList list : lists) {
            Id borrower = list.player().orElseThrow();
            for (Borrow borrow : list.borrowed()) {
                for (Content thing : borrow.things()) {
                    Borrowing borrowing = borrowing(list, borrow, thing, after);
                    after = after.lending(catalogue, borrowing, borrow.lender(), borrower, thing.what());
                    if (borrowing.come() > 0) {
                        promised.add(ListTitle.player(borrower, meanings) + " has borrowed " + borrowing.come() + " "
                                + catalogue.title(thing.what()) + " from " + from(borrow) + ".");
                    }
                    remark(borrow, thing, borrowing, promised);
                }
            }
        }
        return after;
    }

    private Borrowing borrowing(ForceList list, Borrow borrow, Content thing, Inventory inventory) {
        return Borrowing.of(catalogue, inventory, borrow.lender(), list.player().orElseThrow(), thing.what(), thing.count());
    }

    private String from(Borrow borrow) {
        return borrow.lender().map(player -> ListTitle.player(player, meanings)).orElse("the club");
    }

    private void remark(Borrow borrow, Content thing, Borrowing borrowing, List<String> remarks) {
        String from = from(borrow);
        String what = catalogue.title(thing.what());
        if (borrowing.trusted() && borrowing.asked() > 0) {
            remarks.add(borrowing.asked() + " " + what + " from " + from + " are taken on trust, for " + from
                    + " has no shelf here.");
        } else if (borrowing.come() < borrowing.asked()) {
            remarks.add("Of " + borrowing.asked() + " " + what + " that are to be borrowed from " + from + ", only "
                    + borrowing.come() + (borrowing.come() == 1 ? " is there." : " are there."));
        }
    }
}
