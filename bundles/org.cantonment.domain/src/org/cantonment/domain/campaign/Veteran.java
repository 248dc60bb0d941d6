package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A named unit that lives from list to list. */
public record Veteran(Id id, String label, Id player, Id unit, List<String> notes) implements Titled {

    public Veteran {
        notes = List.copyOf(notes);
    }
}
