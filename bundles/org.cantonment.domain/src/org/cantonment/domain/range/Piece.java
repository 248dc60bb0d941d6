package org.cantonment.domain.range;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A piece type: one physical miniature as it sits on a shelf. */
public record Piece(Id id, String label, Optional<Id> family, List<String> notes) implements Titled {

    public Piece {
        notes = List.copyOf(notes);
    }
}
