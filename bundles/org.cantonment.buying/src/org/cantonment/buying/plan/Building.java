package org.cantonment.buying.plan;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;

/**
 * So many parts built in one way in a stage. Parts that come loose between games are not among them: they ask for no choice
 * that lasts.
 *
 * @param build the line of the range that says how; the part itself if it is kept as it is
 * @param gives what each gives of what the targets need
 */
public record Building(Id part, Id build, Fixing fixing, int count, int stage, Map<Id, Integer> gives) {

    public Building {
        gives = Collections.unmodifiableMap(new TreeMap<>(gives));
    }
}
