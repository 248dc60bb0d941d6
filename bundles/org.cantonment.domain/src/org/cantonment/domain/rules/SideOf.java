package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Belongs to these sides and to no other. */
public record SideOf(Id id, List<Id> sides, Validity when) implements Fact {

    public SideOf {
        sides = List.copyOf(sides);
    }
}
