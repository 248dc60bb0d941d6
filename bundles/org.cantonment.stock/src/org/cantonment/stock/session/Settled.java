package org.cantonment.stock.session;

import java.util.HashMap;
import java.util.Map;

import org.cantonment.domain.common.Id;

/**
 * What a branch of the search has settled.
 *
 * @param parted how frames are parted among their ways, by the place of the lump
 * @param itself of types that may mean one thing only at a player's table, whether each stands for itself there
 */
record Settled(Map<Integer, int[]> parted, Map<Meaning, Boolean> itself) {

    /** Nothing. */
    static final Settled NOTHING = new Settled(Map.of(), Map.of());

    /** A type at the table of a seat. */
    record Meaning(int seat, Id type) {
    }

    Settled {
        parted = Map.copyOf(parted);
        itself = Map.copyOf(itself);
    }

    Settled with(int lump, int[] parting) {
        Map<Integer, int[]> more = new HashMap<>(parted);
        more.put(lump, parting);
        return new Settled(more, itself);
    }

    Settled with(Meaning meaning, boolean standsForItself) {
        Map<Meaning, Boolean> more = new HashMap<>(itself);
        more.put(meaning, standsForItself);
        return new Settled(parted, more);
    }
}
