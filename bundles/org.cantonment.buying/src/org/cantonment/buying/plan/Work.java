package org.cantonment.buying.plan;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;

/**
 * What the builds of a stage are at the bench.
 *
 * @param minutes how long they take, as far as the parts say
 * @param parts how many parts are built
 * @param untimed the parts among them that do not say how long they take, and how many of each
 */
public record Work(long minutes, long parts, Map<Id, Integer> untimed) {

    /** Nothing is built. */
    public static final Work NONE = new Work(0, 0, Map.of());

    public Work {
        untimed = Collections.unmodifiableMap(new TreeMap<>(untimed));
    }

    /** This and that. */
    public Work plus(Work other) {
        Map<Id, Integer> both = new TreeMap<>(untimed);
        other.untimed.forEach((part, count) -> both.merge(part, count, Integer::sum));
        return new Work(minutes + other.minutes, parts + other.parts, both);
    }
}
