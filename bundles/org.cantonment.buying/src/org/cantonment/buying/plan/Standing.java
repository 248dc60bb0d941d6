package org.cantonment.buying.plan;

import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Turnout;

/** What a turnout uses up of each type. */
final class Standing {

    private Standing() {
    }

    /** What stands as it is, and what was worked over, by types that tell whose they are. */
    static Map<Id, Integer> of(Turnout turnout, Shares shares, int person) {
        Map<Id, Integer> used = new TreeMap<>();
        for (Posting one : turnout.postings()) {
            if (one.truth() != Truth.CONVERSION) {
                used.merge(shares.of(one.type(), person), one.count(), Integer::sum);
            }
        }
        turnout.worked().forEach(one -> one.conversion().from()
                .forEach((type, takes) -> used.merge(shares.of(type, person), takes * one.times(), Integer::sum)));
        return used;
    }
}
