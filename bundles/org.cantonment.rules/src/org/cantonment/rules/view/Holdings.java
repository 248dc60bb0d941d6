package org.cantonment.rules.view;

import java.util.Map;
import java.util.Set;

import org.cantonment.domain.common.Id;

/**
 * The pieces that a player has at hand, built.
 *
 * @param owned how many of each type
 * @param painted how many of those are painted
 * @param uncounted types of which nobody knows how many there are
 */
public record Holdings(Map<Id, Long> owned, Map<Id, Long> painted, Set<Id> uncounted) {

    public Holdings {
        owned = Map.copyOf(owned);
        painted = Map.copyOf(painted);
        uncounted = Set.copyOf(uncounted);
    }
}
