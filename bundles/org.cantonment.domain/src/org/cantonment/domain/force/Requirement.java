package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * What an entry needs on the table: so many pieces or items, of any of these types and families.
 *
 * @param unit the unit that the entry is, for whatever may stand for that unit; empty if nobody knows
 */
public record Requirement(Id entry, Optional<Id> unit, int count, List<Id> anyOf) {

    public Requirement {
        anyOf = List.copyOf(anyOf);
    }

    /** The same of an entry whose unit nobody knows. */
    public Requirement(Id entry, int count, List<Id> anyOf) {
        this(entry, Optional.empty(), count, anyOf);
    }
}
