package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A club that players belong to. */
public record Club(Id id, String label, List<String> notes) implements Titled {

    public Club {
        notes = List.copyOf(notes);
    }
}
