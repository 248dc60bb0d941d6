package org.cantonment.stock.supply;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;

/**
 * One way to build a part.
 *
 * @param build the line of the range that says so
 * @param gives the pieces of this handful, by type
 * @param leaves the bits that are left over, by kind
 */
public record Way(Id build, Map<Id, Integer> gives, Map<Id, Integer> leaves) {

    public Way {
        gives = Collections.unmodifiableMap(new TreeMap<>(gives));
        leaves = Collections.unmodifiableMap(new TreeMap<>(leaves));
    }

    /** A way that leaves nothing. */
    public Way(Id build, Map<Id, Integer> gives) {
        this(build, gives, Map.of());
    }

    /** All that lies there once a part is built so: the handful and the bits. */
    public Map<Id, Integer> yields() {
        if (leaves.isEmpty()) {
            return gives;
        }
        Map<Id, Integer> all = new TreeMap<>(gives);
        leaves.forEach((what, count) -> all.merge(what, count, Counts::sum));
        return all;
    }
}
