package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A span of the war; what is said from an era on holds for all that come after it. */
public record Era(Id id, String label, Optional<Id> after, List<String> notes) implements Titled {

    public Era {
        notes = List.copyOf(notes);
    }
}
