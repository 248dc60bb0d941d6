package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;

/** A number of places for units, kinds, formations or supports named here. */
public record Places(Span span, List<Id> of) {

    public Places {
        of = List.copyOf(of);
    }

    /** What takes part in it, and how many. */
    public static Places of(Span span, Id... of) {
        return new Places(span, List.of(of));
    }
}
