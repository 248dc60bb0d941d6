package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/**
 * An option by its name, at most max of it (once if nothing is said). A later line of the same name changes only
 * what it says. It needs these other options of the same unit, and is one of the options of each group, of which
 * only one may be taken.
 */
public record Option(
        Id id, String name, String label, OptionalInt max, Optional<Cost> cost, List<Need> adds,
        List<Swap> swaps, List<Need> drops, List<String> needs, List<String> groups, Validity when) implements Fact {

    public Option {
        adds = List.copyOf(adds);
        swaps = List.copyOf(swaps);
        drops = List.copyOf(drops);
        needs = List.copyOf(needs);
        groups = List.copyOf(groups);
    }
}
