package org.cantonment.stock.likeness;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;

/**
 * Spare pieces and bits worked over into a type. They lie there ready, or are built for it first; what comes loose between
 * games is not worked over, and what was converted is not converted again.
 *
 * @param line where it stands
 * @param from what one takes, by type
 * @param to the type it gives
 * @param gives how many of it
 * @param times how often at most; empty for no end
 */
public record Conversion(Id line, Map<Id, Integer> from, Id to, int gives, OptionalInt times) {

    public Conversion {
        from = Collections.unmodifiableMap(new TreeMap<>(from));
    }
}
