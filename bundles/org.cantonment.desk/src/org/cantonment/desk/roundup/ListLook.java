package org.cantonment.desk.roundup;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/**
 * A list that was handed in, and what the check said of it.
 *
 * @param player   whose it is
 * @param round    for which round
 * @param total    its points
 * @param limit    the points it may have
 * @param breaches what makes it not legal, the first reason first; empty if it is legal
 */
public record ListLook(Id player, int round, OptionalInt total, OptionalInt limit, List<String> breaches) {
    public ListLook {
        breaches = List.copyOf(breaches);
    }

    /** Whether nothing stands against it. */
    public boolean legal() {
        return breaches.isEmpty();
    }
}
