package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** Left-over bits, which feed conversions. */
public record Bits(Id id, String label, List<String> notes) implements Titled {

    public Bits {
        notes = List.copyOf(notes);
    }
}
