package org.cantonment.buying.reach;

import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Allowance;

/**
 * A formation that is asked about.
 *
 * @param known all formations there are at that time, those that may lie within it among them
 * @param formation which of them
 * @param strength how strong
 * @param allowance what may stand for what when it is fielded
 */
public record Asked(Map<Id, Formation> known, Id formation, Strength strength, Allowance allowance) {

    /** @throws IllegalArgumentException if the formation is not known */
    public Asked {
        known = Map.copyOf(known);
        if (!known.containsKey(formation)) {
            throw new IllegalArgumentException(formation + " is not known");
        }
    }
}
