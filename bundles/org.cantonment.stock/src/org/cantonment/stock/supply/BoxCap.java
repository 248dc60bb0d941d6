package org.cantonment.stock.supply;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;

/**
 * Of all that is built from these frames, at most so many of these types together.
 *
 * @param cap the line of the range that says so
 * @param frames their places in the supply's list of frames
 */
public record BoxCap(Id cap, int most, Set<Id> of, List<Integer> frames) {

    public BoxCap {
        of = Collections.unmodifiableSet(new TreeSet<>(of));
        frames = List.copyOf(frames);
    }
}
