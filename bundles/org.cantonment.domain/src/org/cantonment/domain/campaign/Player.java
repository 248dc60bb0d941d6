package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A player. The id is not a name; the label may be empty and stand in a book of names. */
public record Player(
        Id id, String label, Optional<Id> side, Optional<Id> club, OptionalInt rated, OptionalInt joins,
        OptionalInt leaves, List<String> evenings, boolean newcomer, List<String> notes) implements Titled {

    public Player {
        evenings = List.copyOf(evenings);
        notes = List.copyOf(notes);
    }
}
