package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;

/**
 * A formation of a draft, on the way or full.
 *
 * @param parent the number of the formation that it stands in; -1 if in none
 * @param fills what stands in its billets, one for each
 */
record Troop(FormationView of, int parent, List<Fill> fills) {

    /** No room of the billet has been chosen yet. */
    static final int OPEN = -1;

    /**
     * What stands in a billet.
     *
     * @param room the number of the room through which it is filled; {@link #OPEN} as long as nothing is in it
     * @param count how many units and formations
     */
    record Fill(int room, int count, List<Taking> units) {

        static final Fill NONE = new Fill(OPEN, 0, List.of());

        Fill {
            units = List.copyOf(units);
        }

        Fill plus(int through, Taking taking) {
            List<Taking> more = new ArrayList<>(units);
            if (taking != null) {
                more.add(taking);
                more.sort(null);
            }
            return new Fill(through, count + 1, more);
        }
    }

    Troop {
        fills = List.copyOf(fills);
    }

    static Troop empty(FormationView of, int parent) {
        return new Troop(of, parent, Collections.nCopies(of.billets().size(), Fill.NONE));
    }

    /** The same with one more in a billet; a formation is counted alone. */
    Troop plus(int billet, int room, Taking taking) {
        List<Fill> more = new ArrayList<>(fills);
        more.set(billet, fills.get(billet).plus(room, taking));
        return new Troop(of, parent, more);
    }

    /** How many a billet still must take: by the room that is chosen, else by the one that asks for least. */
    int lacks(int billet) {
        Fill fill = fills.get(billet);
        List<Room> rooms = of.billets().get(billet).rooms();
        return fill.room() == OPEN ? rooms.stream().mapToInt(room -> room.span().min()).min().orElse(0)
                : rooms.get(fill.room()).span().min() - fill.count();
    }

    /** The first billet that still must take somebody; -1 if there is none. */
    int open() {
        for (int b = 0; b < fills.size(); b++) {
            if (lacks(b) > 0) {
                return b;
            }
        }
        return OPEN;
    }

    /** Whether a room of a billet can take one more. */
    boolean takes(int billet, int room) {
        Fill fill = fills.get(billet);
        BilletView view = of.billets().get(billet);
        return (fill.room() == OPEN || fill.room() == room) && fill.count() < view.rooms().get(room).span().max();
    }
}
