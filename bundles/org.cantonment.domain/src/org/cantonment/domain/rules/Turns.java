package org.cantonment.domain.rules;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Content;

/** A conversion: spare pieces worked over into another type. */
public record Turns(Id id, List<Content> from, Content to, OptionalInt times, Validity when) implements Fact {

    public Turns {
        from = List.copyOf(from);
    }
}
