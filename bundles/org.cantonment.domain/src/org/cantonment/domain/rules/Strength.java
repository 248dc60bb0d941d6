package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/**
 * May be taken at a strength from..to, what that costs, and what it needs beside the unit's own needs. The key is
 * from..to.
 */
public record Strength(Id id, int from, int to, Cost cost, List<Need> needs, Validity when) implements Fact {

    public Strength {
        needs = List.copyOf(needs);
    }
}
