package org.cantonment.rules.place;

import java.util.List;

import org.cantonment.rules.view.Selector;

/** One way to use a slot: from min to max places for those the selector takes. */
public record Bay(int min, int max, Selector of) {

    /** One bay that demands as little and takes as much as any of these. */
    static Bay union(List<Bay> bays) {
        if (bays.size() == 1) {
            return bays.get(0);
        }
        int min = Integer.MAX_VALUE;
        int max = 0;
        for (Bay bay : bays) {
            min = Math.min(min, bay.min);
            max = Math.max(max, bay.max);
        }
        return new Bay(min, max, Selector.union(bays.stream().map(Bay::of).toList()));
    }
}
