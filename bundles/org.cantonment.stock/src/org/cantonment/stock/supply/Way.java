package org.cantonment.stock.supply;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;

/**
 * One way to build a part.
 *
 * @param build the line of the range that says so
 * @param gives the pieces of this handful, by type; bits left over are not among them
 */
public record Way(Id build, Map<Id, Integer> gives) {

    public Way {
        gives = Collections.unmodifiableMap(new TreeMap<>(gives));
    }
}
