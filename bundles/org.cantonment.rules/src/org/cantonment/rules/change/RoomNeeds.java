package org.cantonment.rules.change;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Room;

/**
 * How much room the billets of a formation have: no more of some units than all billets that take any of them hold, and
 * so many for each billet as it must have. Where a billet can be filled in several ways, its most generous measure counts.
 */
final class RoomNeeds {

    private final Needs needs;
    private final Place place;
    private final Node formation;

    RoomNeeds(Needs needs, Place place, Node formation) {
        this.needs = needs;
        this.place = place;
        this.formation = formation;
    }

    void into(List<Need> into) {
        List<BilletView> billets = place.formation().billets();
        Set<BitSet> seen = new LinkedHashSet<>();
        for (Choice choice : place.part().now().choices()) {
            BitSet reach = new BitSet();
            for (int b = 0; b < billets.size(); b++) {
                reach.set(b, takes(billets.get(b), choice));
            }
            if (!reach.isEmpty()) {
                seen.add(reach);
            }
        }
        seen.forEach(reach -> most(billets, reach, into));
        for (BilletView billet : billets) {
            int min = billet.rooms().stream().mapToInt(room -> room.span().min()).min().orElse(0);
            if (min > 0) {
                BitSet taken = new BitSet();
                for (Choice choice : place.part().now().choices()) {
                    taken.set(choice.index(), takes(billet, choice));
                }
                add(min - count(taken), taken, 1, into);
            }
        }
    }

    private void most(List<BilletView> billets, BitSet reach, List<Need> into) {
        long room = 0;
        for (int b = reach.nextSetBit(0); b >= 0; b = reach.nextSetBit(b + 1)) {
            room += billets.get(b).rooms().stream().mapToInt(some -> some.span().max()).max().orElse(0);
        }
        BitSet only = new BitSet();
        for (Choice choice : place.part().now().choices()) {
            boolean within = true;
            boolean any = false;
            for (int b = 0; b < billets.size(); b++) {
                boolean takes = takes(billets.get(b), choice);
                within &= !takes || reach.get(b);
                any |= takes;
            }
            only.set(choice.index(), within && any);
        }
        add(count(only) - room, only, -1, into);
    }

    private void add(long deficit, BitSet some, int sign, List<Need> into) {
        into.add(Need.of(deficit, needs.open(), edit -> effect(edit, some, sign, Math.max(0, deficit))));
    }

    private static boolean takes(BilletView billet, Choice choice) {
        for (Room room : billet.rooms()) {
            if (room.of().takes(choice.index())) {
                return true;
            }
        }
        return false;
    }

    private long count(BitSet some) {
        Muster muster = needs.muster(place.part());
        long count = 0;
        for (int i = formation.index() + 1; i < formation.end(); i = muster.nodes().get(i).end()) {
            Node child = muster.nodes().get(i);
            count += child.choice() != null && !child.support() && some.get(child.choice().index()) ? child.count() : 0;
        }
        return count;
    }

    /** Where the formation goes, nothing is done in it; so that makes up for what is lacking, and for no more. */
    private long effect(Edit edit, BitSet some, int sign, long lacking) {
        if (edit.kind() == Kind.REMOVE && edit.group().formation() && (edit.group() == place.above()
                || place.above() != null && place.above().within(edit.group()))) {
            return lacking;
        }
        if ((edit.group() != null ? edit.group().home() : edit.place()) != place) {
            return 0;
        }
        long effect = 0;
        boolean first = true;
        for (Delta delta : edit.deltas()) {
            boolean own = first || edit.kind() != Kind.REMOVE;
            Choice choice = place.part().now().choice(delta.choice());
            if (own && choice != null && some.get(choice.index())) {
                effect += sign * Long.signum(delta.count());
            }
            first = false;
        }
        return effect;
    }
}
