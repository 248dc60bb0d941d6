package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A table to play on. */
public record Table(Id id, String label, List<String> notes) implements Titled {

    public Table {
        notes = List.copyOf(notes);
    }
}
