package org.cantonment.stock.likeness;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;

/**
 * What may fill a need.
 *
 * @param types the types that may stand there of themselves or as kindred, and how true each is; in the order
 *         of their ids
 * @param standIns the types that may stand there by lines of likeness, by the place of the line in the allowance;
 *         a type may be there that may stand truer, too
 */
public record Accepted(Map<Id, Truth> types, Map<Integer, Set<Id>> standIns) {

    public Accepted {
        types = Collections.unmodifiableMap(new LinkedHashMap<>(types));
        standIns = Collections.unmodifiableMap(new TreeMap<>(standIns));
    }
}
