package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/**
 * A line of a list: so many alike of a unit or formation. Without a strength it is the least one; a formation's own
 * units stand in its body. The billet is a pin: the name of a billet or support it must be placed in.
 */
public record Entry(
        Id id, Optional<String> billet, int count, Id what, OptionalInt strength, List<Taken> options,
        Optional<String> alias, String label, Optional<String> joins, Body body, List<String> notes) {

    public Entry {
        options = List.copyOf(options);
        notes = List.copyOf(notes);
    }
}
