package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Is of these kinds. */
public record Membership(Id id, List<Id> kinds, Validity when) implements Fact {

    public Membership {
        kinds = List.copyOf(kinds);
    }
}
