package org.cantonment.rules.change;

import java.util.BitSet;
import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Room;

/**
 * Who could move up from billet to billet of a formation, where each can be filled in one way only: what comes in far away
 * may set somebody free for an empty billet, and what goes may make room for somebody elsewhere.
 */
final class Chain {

    private final Billeting billeting;
    private final List<BilletView> billets;

    Chain(Billeting billeting) {
        this.billeting = billeting;
        this.billets = billeting.formation().formation().billets();
    }

    private boolean takes(int billet, Node child) {
        String pin = child.entry().billet().orElse(null);
        boolean elsewhere = pin != null && !pin.equals(billets.get(billet).name())
                && billets.stream().anyMatch(some -> some.name().equals(pin));
        return !elsewhere && billets.get(billet).rooms().get(0).of().takes(child.choice().index());
    }

    private boolean stands(int child, int billet) {
        return billeting.placement().where()[child][billet] > 0;
    }

    /** The choices of which one that comes may help to fill a billet. */
    BitSet filling(int billet) {
        BitSet reached = new BitSet();
        reached.set(billet);
        for (int rounds = 0; rounds < billets.size(); rounds++) {
            for (int i = 0; i < billeting.children().size(); i++) {
                Node child = billeting.children().get(i);
                if (reached.stream().anyMatch(b -> takes(b, child))) {
                    for (int b = 0; b < billets.size(); b++) {
                        if (stands(i, b)) {
                            reached.set(b);
                        }
                    }
                }
            }
        }
        BitSet choices = new BitSet();
        for (int b = reached.nextSetBit(0); b >= 0; b = reached.nextSetBit(b + 1)) {
            for (Room room : billets.get(b).rooms()) {
                for (int c = room.of().nextChoice(0); c >= 0; c = room.of().nextChoice(c + 1)) {
                    choices.set(c);
                }
            }
        }
        return choices;
    }

    /** The choices of which one that goes may make room for an entry. */
    BitSet crowding(Id entry) {
        BitSet reached = new BitSet();
        BitSet choices = new BitSet();
        for (Node child : billeting.children()) {
            if (child.entry().id().equals(entry)) {
                choices.set(child.choice().index());
                for (int b = 0; b < billets.size(); b++) {
                    reached.set(b, takes(b, child));
                }
            }
        }
        for (int rounds = 0; rounds < billets.size(); rounds++) {
            for (int i = 0; i < billeting.children().size(); i++) {
                Node child = billeting.children().get(i);
                for (int b = 0; b < billets.size(); b++) {
                    if (stands(i, b) && reached.get(b)) {
                        choices.set(child.choice().index());
                        for (int other = 0; other < billets.size(); other++) {
                            if (takes(other, child)) {
                                reached.set(other);
                            }
                        }
                    }
                }
            }
        }
        return choices;
    }
}
