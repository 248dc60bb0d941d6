package org.cantonment.rules.muster;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.rules.place.Bay;
import org.cantonment.rules.place.Placement;
import org.cantonment.rules.place.Placer;
import org.cantonment.rules.place.Slot;
import org.cantonment.rules.place.Supply;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;

/**
 * Who stands in which billet of one formation of the list.
 *
 * @param formation the formation's node
 * @param children the nodes that stand in it, in the order of the list
 * @param placement by the numbers of children and billets
 */
public record Billeting(Node formation, List<Node> children, Placement placement) {

    /** Places the children of a formation's node in its billets. */
    static Billeting of(Muster muster, Node formation, CancelToken cancel) {
        FormationView view = formation.formation();
        List<Node> children = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        for (int i = formation.index + 1; i < formation.end; i = muster.nodes().get(i).end) {
            Node child = muster.nodes().get(i);
            if (child.choice != null && !child.support) {
                children.add(child);
                supplies.add(new Supply(child.choice.index(), child.count, pin(child, view)));
            }
        }
        List<Slot> slots = new ArrayList<>();
        for (BilletView billet : view.billets()) {
            List<Bay> bays = new ArrayList<>();
            for (Room room : billet.rooms()) {
                bays.add(new Bay(room.span().min(), room.span().max(), room.of()));
            }
            slots.add(new Slot(bays));
        }
        return new Billeting(formation, children, Placer.place(supplies, slots, cancel));
    }

    /** The number of the billet that the entry is pinned to; -1 for none. */
    private static int pin(Node child, FormationView view) {
        if (child.entry.billet().isPresent()) {
            for (int b = 0; b < view.billets().size(); b++) {
                if (view.billets().get(b).name().equals(child.entry.billet().get())) {
                    return b;
                }
            }
        }
        return -1;
    }

    /** The room through which a billet is used. */
    public Room room(int billet) {
        return formation.formation().billets().get(billet).rooms().get(placement.bays()[billet]);
    }
}
