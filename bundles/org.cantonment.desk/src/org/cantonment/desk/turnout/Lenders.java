package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.session.Lender;
import org.cantonment.stock.supply.Supply;

/**
 * Who has what on an evening, nothing twice. What several share is the one's who plays, if only one of them does; where
 * more of them play, the first has what is not built, and the rest is there for all of them; where none does, they lend it
 * together.
 *
 * @param all    everybody with what is at hand
 * @param shared the owners of what is lent together, by its lender
 */
record Lenders(List<Lender> all, Map<Id, Set<Id>> shared) {
    private static final Id CLUB = Id.of("the-club");

    static boolean club(Id who) {
        return who.equals(CLUB);
    }

    /** @param playing who plays, in the order of the seats */
    static Lenders of(Inventory inventory, List<Id> playing) {
        List<Lender> all = new ArrayList<>(List.of(new Lender(CLUB, inventory.club())));
        Map<Id, Set<Id>> shared = new HashMap<>();
        inventory.owners().forEach((pile, owners) -> {
            Supply supply = inventory.piles().getOrDefault(pile, Supply.NONE);
            List<Id> here = playing.stream().filter(owners::contains).toList();
            if (owners.size() == 1) {
                all.add(new Lender(owners.iterator().next(), supply));
            } else if (here.size() == 1) {
                all.add(new Lender(here.get(0), supply));
            } else if (owners.size() > 1) {
                shared.put(pile, new TreeSet<>(owners));
                all.add(new Lender(pile, new Supply(supply.stacks(), List.of(), List.of(), List.of()), Set.copyOf(here)));
                here.stream().limit(1).forEach(first -> all.add(new Lender(first,
                        new Supply(List.of(), supply.frames(), supply.caps(), List.of()))));
            }
        });
        return new Lenders(all, shared);
    }
}
