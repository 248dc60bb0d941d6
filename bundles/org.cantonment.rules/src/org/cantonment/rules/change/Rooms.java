package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;

/**
 * How much room the billets of a formation have: no more of some units than all billets that take any of them hold, and
 * so many for each billet as it must have. Where a billet can be filled in several ways, its most generous measure counts.
 */
final class Rooms {

    private final List<BilletView> billets;
    private final List<Choice> choices;
    private final List<Measure> measures = new ArrayList<>();

    /**
     * So many of some choices.
     *
     * @param some the numbers of the choices
     * @param atMost whether it may be no more, else no fewer
     */
    record Measure(BitSet some, long count, boolean atMost) {
    }

    private Rooms(FormationView formation, List<Choice> choices) {
        this.billets = formation.billets();
        this.choices = choices;
        most();
        least();
    }

    /** The measures of a formation, among all choices of its rules. */
    static List<Measure> of(FormationView formation, List<Choice> choices) {
        return new Rooms(formation, choices).measures;
    }

    private void most() {
        Set<BitSet> seen = new LinkedHashSet<>();
        for (Choice choice : choices) {
            BitSet reach = reach(choice);
            if (!reach.isEmpty()) {
                seen.add(reach);
            }
        }
        for (BitSet reach : seen) {
            long room = 0;
            for (int b = reach.nextSetBit(0); b >= 0; b = reach.nextSetBit(b + 1)) {
                room += billets.get(b).rooms().stream().mapToInt(some -> some.span().max()).max().orElse(0);
            }
            measures.add(new Measure(within(reach), room, true));
        }
    }

    /** The choices that go into these billets and no others. */
    private BitSet within(BitSet billets) {
        BitSet only = new BitSet();
        for (Choice choice : choices) {
            BitSet others = reach(choice);
            boolean any = !others.isEmpty();
            others.andNot(billets);
            only.set(choice.index(), any && others.isEmpty());
        }
        return only;
    }

    private void least() {
        for (BilletView billet : billets) {
            int min = billet.rooms().stream().mapToInt(room -> room.span().min()).min().orElse(0);
            if (min > 0) {
                BitSet taken = new BitSet();
                for (Choice choice : choices) {
                    taken.set(choice.index(), takes(billet, choice));
                }
                measures.add(new Measure(taken, min, false));
            }
        }
    }

    private BitSet reach(Choice choice) {
        BitSet reach = new BitSet();
        for (int b = 0; b < billets.size(); b++) {
            reach.set(b, takes(billets.get(b), choice));
        }
        return reach;
    }

    private static boolean takes(BilletView billet, Choice choice) {
        for (Room room : billet.rooms()) {
            if (room.of().takes(choice.index())) {
                return true;
            }
        }
        return false;
    }
}
