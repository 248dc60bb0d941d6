package org.cantonment.buying.plan;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;

/**
 * So many parts that stand built in one way: in a stage, or, of parts that come loose between games, for one target alone.
 *
 * @param part the part; where several order together also a piece, which is given to one of them
 * @param build the line of the range that says how; the part itself if it is kept or given as it is
 * @param count how many stand so: of what is glued, those that are built in this stage
 * @param newly how many of them did not stand so before
 * @param person whom it is for, from 0
 * @param gives what each gives of what the targets need
 */
public record Building(Id part, Id build, Fixing fixing, int count, int newly, int stage, int person,
        Map<Id, Integer> gives) {

    public Building {
        gives = Collections.unmodifiableMap(new TreeMap<>(gives));
    }

    /** The same where only so many did not stand so before. */
    Building only(int fresh) {
        return new Building(part, build, fixing, count, fresh, stage, person, gives);
    }

    /** As many as both; the other must be of the same part, build and person. */
    public Building plus(Building other) {
        Map<Id, Integer> both = new TreeMap<>(gives);
        other.gives.forEach((type, each) -> both.merge(type, each, Math::max));
        return new Building(part, build, fixing, count + other.count, newly + other.newly, stage, person, both);
    }
}
