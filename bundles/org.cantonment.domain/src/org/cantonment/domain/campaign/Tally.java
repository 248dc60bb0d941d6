package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** Something counted beside the score: objectives, attendance, paint. */
public record Tally(Id id, String label, List<String> notes) implements Titled {

    public Tally {
        notes = List.copyOf(notes);
    }
}
