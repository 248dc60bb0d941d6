package org.cantonment.buying.plan;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalInt;
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

    /** So many parts that take so long each. */
    public static Work of(Id part, long count, OptionalInt minutes) {
        return new Work(count * minutes.orElse(0), count, count == 0 || minutes.isPresent() ? Map.of() : Map.of(part, (int) count));
    }

    /** This and that. */
    public Work plus(Work other) {
        Map<Id, Integer> both = new TreeMap<>(untimed);
        other.untimed.forEach((part, count) -> both.merge(part, count, Integer::sum));
        return new Work(minutes + other.minutes, parts + other.parts, both);
    }
}
