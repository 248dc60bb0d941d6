package org.cantonment.stock.turnout;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Conversion;

/**
 * A conversion that a turnout would have made, so many times.
 *
 * @param built how many of what it takes come out of builds of the same turnout, by type; the rest lies there ready
 */
public record Worked(Conversion conversion, int times, Map<Id, Integer> built) {

    public Worked {
        built = Collections.unmodifiableMap(new TreeMap<>(built));
    }
}
