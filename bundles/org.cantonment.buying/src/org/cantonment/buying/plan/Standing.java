package org.cantonment.buying.plan;

import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Turnout;

/** What a turnout uses up of each type. */
final class Standing {

    private Standing() {
    }

    /** What stands as it is, and what was worked over. */
    static Map<Id, Integer> of(Turnout turnout) {
        Map<Id, Integer> used = new TreeMap<>();
        for (Posting one : turnout.postings()) {
            if (one.truth() != Truth.CONVERSION) {
                used.merge(one.type(), one.count(), Integer::sum);
            }
        }
        turnout.worked().forEach(one -> one.conversion().from()
                .forEach((type, takes) -> used.merge(type, takes * one.times(), Integer::sum)));
        return used;
    }
}
