package org.cantonment.domain.range;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A family of kindred piece types; a family may lie in a bigger one. */
public record Family(Id id, String label, Optional<Id> parent, List<String> notes) implements Titled {

    public Family {
        notes = List.copyOf(notes);
    }
}
