package org.cantonment.buying.reach;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.eras.FieldUnit;

/**
 * A formation as a shelf sees it.
 *
 * @param billets each is filled through exactly one of its rooms; one without a room stays empty
 */
public record Formation(Id id, List<Billet> billets) {

    /** More places than any room is filled with. */
    public static final int MOST = 40;

    /** A billet: several rooms are several ways to fill it. */
    public record Billet(List<Room> rooms) {

        public Billet {
            rooms = List.copyOf(rooms);
        }

        /** Filled in one way only. */
        public static Billet of(int min, int max, List<FieldUnit> units) {
            return new Billet(List.of(new Room(min, max, units, List.of())));
        }
    }

    /**
     * So many places, in each of them one of these units or formations.
     *
     * @param min at least so many
     * @param max at most so many, at least min; more than {@link #MOST} are not asked about
     */
    public record Room(int min, int max, List<FieldUnit> units, List<Id> formations) {

        /** @throws IllegalArgumentException unless 0 ≤ min ≤ max */
        public Room {
            if (min < 0 || max < min) {
                throw new IllegalArgumentException("A billet has from 0 places upwards, not " + min + " to " + max);
            }
            units = List.copyOf(units);
            formations = List.copyOf(formations);
        }

        /** How many places are filled where it is filled at all. */
        int places(Strength strength) {
            return Math.min(MOST, strength == Strength.LEAST ? min : max);
        }
    }

    public Formation {
        billets = List.copyOf(billets);
    }
}
