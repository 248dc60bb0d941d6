package org.cantonment.buying.formulate;

import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Way;

/** A part and how it is built. */
public record BuildKey(Id part, Fixing fixing, Id build, Map<Id, Integer> gives) implements Comparable<BuildKey> {

    BuildKey(Pool pool, Way way) {
        this(pool.part(), pool.fixing(), way.build(), new TreeMap<>(way.yields()));
    }

    @Override
    public int compareTo(BuildKey other) {
        int order = part.compareTo(other.part);
        order = order != 0 ? order : build.compareTo(other.build);
        order = order != 0 ? order : fixing.compareTo(other.fixing);
        return order != 0 ? order : gives.toString().compareTo(other.gives.toString());
    }
}
