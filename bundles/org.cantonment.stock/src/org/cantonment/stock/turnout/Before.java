package org.cantonment.stock.turnout;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;

/**
 * Who stood where last time: of turnouts as full and as true, the one that is most like it is taken.
 *
 * @param stood for each need of now how many of each type stood there
 */
public record Before(Map<Requirement, Map<Id, Integer>> stood) {

    /** Nobody remembers. */
    public static final Before NOTHING = new Before(Map.of());

    public Before {
        stood = Collections.unmodifiableMap(new LinkedHashMap<>(stood));
    }

    /** How many of the type stood for the need. */
    int stood(Requirement need, Id type) {
        return stood.getOrDefault(need, Map.of()).getOrDefault(type, 0);
    }
}
