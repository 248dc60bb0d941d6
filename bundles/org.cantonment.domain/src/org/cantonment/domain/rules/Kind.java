package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A kind of unit; a kind may lie in a wider one. */
public record Kind(Id id, String label, Optional<Id> parent, List<String> notes) implements Titled {

    public Kind {
        notes = List.copyOf(notes);
    }
}
