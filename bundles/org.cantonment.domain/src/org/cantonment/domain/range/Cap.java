package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Of all that is built from one box, at most so many of these together. */
public record Cap(Id id, int most, List<Id> of) {

    public Cap {
        of = List.copyOf(of);
    }
}
