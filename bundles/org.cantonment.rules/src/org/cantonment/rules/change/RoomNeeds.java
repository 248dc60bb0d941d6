package org.cantonment.rules.change;

import java.util.BitSet;
import java.util.List;

import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;

/** What the {@link Rooms} of one formation of a changed list ask for: so many fewer, so many more, or to keep what is there. */
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
        for (Rooms.Measure measure : needs.board().rooms(place.part(), place.formation())) {
            long lacking = measure.count() - count(measure.some());
            long deficit = measure.atMost() ? -lacking : lacking;
            int sign = measure.atMost() ? -1 : 1;
            into.add(Need.of(deficit, needs.open(), edit -> effect(edit, measure.some(), sign, Math.max(0, deficit))));
        }
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
            Choice choice = place.part().own(delta.choice());
            if (own && choice != null && some.get(choice.index())) {
                effect += sign * Long.signum(delta.count());
            }
            first = false;
        }
        return effect;
    }
}
