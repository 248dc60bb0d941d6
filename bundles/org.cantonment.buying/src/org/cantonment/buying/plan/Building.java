package org.cantonment.buying.plan;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;

/**
 * So many parts built in one way: in a stage, or, of parts that come loose between games, for one target alone.
 *
 * @param part the part; where several order together also a piece, which is given to one of them
 * @param build the line of the range that says how; the part itself if it is kept or given as it is
 * @param person whom it is for, from 0
 * @param gives what each gives of what the targets need
 */
public record Building(Id part, Id build, Fixing fixing, int count, int stage, int person,
        Map<Id, Integer> gives) {

    public Building {
        gives = Collections.unmodifiableMap(new TreeMap<>(gives));
    }

    /** As many as both; the other must be of the same part, build, stage and person. */
    Building plus(Building other) {
        return new Building(part, build, fixing, count + other.count, stage, person, gives);
    }
}
