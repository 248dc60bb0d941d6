package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.rules.view.FormationView;

/**
 * One thing that may be done to a list; some may be done several times. A change is a bag of these, and the order in
 * which they are taken has no meaning. What was touched once is not touched again.
 *
 * @param id its number on the board
 * @param group whom of the written list it touches; null where something is put in
 * @param place where something is put in, else null
 * @param variant what a unit becomes, or the unit that is put in; else null
 * @param formation the formation that is put in, or null
 * @param moved the points that it moves at the least
 * @param units the units that it touches, counting each written formation once
 * @param least what it costs with all that must follow it, as a {@link Cost}: a formation must be filled
 * @param deltas what it changes in counts and points
 * @param position where it stands: twice the number of the entry, and for what is put in the odd number behind the last
 *        entry of the place
 */
record Edit(int id, Kind kind, Group group, Place place, Variant variant, FormationView formation, long moved,
        int units, long least, List<Delta> deltas, int position) {

    /** What is done. */
    enum Kind {
        /** One of a group goes; of a formation with all that stands in it. */
        REMOVE,
        /** One of a group gets another strength or other options. */
        ALTER,
        /** The successor takes the place of one of a group. */
        SUCCEED,
        /** A group is no longer held to its billet. */
        UNPIN,
        /** A unit is put in. */
        ADD,
        /** An empty formation is put in. */
        ADD_FORMATION
    }

    /** Points and units in one number, the points first. */
    long cost() {
        return Cost.of(moved, units);
    }

    /** Whether it may be taken again and again. */
    boolean endless() {
        return group == null;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return id;
    }
}
