package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** What a list needs on the table that is no unit: markers, a bridge, a card deck. */
public record Item(Id id, String label, List<String> notes) implements Titled {

    public Item {
        notes = List.copyOf(notes);
    }
}
