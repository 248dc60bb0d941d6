package org.cantonment.stock.turnout;

import java.util.List;

import org.cantonment.domain.force.Requirement;

/** Needs that the very same pieces may fill, in the order they were asked. */
record NeedClass(Taker taker, List<Requirement> needs) {

    int count() {
        long count = 0;
        for (Requirement need : needs) {
            count += need.count();
        }
        return (int) Math.min(Integer.MAX_VALUE / 8, count);
    }
}
