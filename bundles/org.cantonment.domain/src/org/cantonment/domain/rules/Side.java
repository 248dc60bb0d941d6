package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** One of the parties of the war. */
public record Side(Id id, String label, List<String> notes) implements Titled {

    public Side {
        notes = List.copyOf(notes);
    }
}
