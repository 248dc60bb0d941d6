package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.view.FormationView;

/**
 * Where something may be put in: at the top of a list or contingent, under the word support, or in a formation.
 *
 * @param id of the list, contingent or written formation; null for a formation that a change puts in
 * @param formation null at the top
 * @param above the written formation that it is in, or null
 * @param by what puts the formation in, or null for a written one
 * @param ordinal its number among those formations, from 0
 * @param weight how many of it there are, counting each written formation once
 * @param position where it stands in the list; see {@link Edit#position}
 * @param adds what may be put in, filled by the board
 */
record Place(Part part, Id id, boolean support, FormationView formation, Group above, Edit by, int ordinal,
        long weight, int position, List<Edit> adds) {

    /** How deep a formation that a change puts in lies in others such. */
    int depth() {
        return by == null ? 0 : by.place().depth() + 1;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
