package org.cantonment.domain.force;

import java.util.List;

import org.cantonment.domain.common.Id;

/** What an entry needs on the table: so many pieces or items, of any of these types and families. */
public record Requirement(Id entry, int count, List<Id> anyOf) {

    public Requirement {
        anyOf = List.copyOf(anyOf);
    }
}
