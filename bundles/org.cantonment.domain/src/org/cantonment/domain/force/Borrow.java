package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Content;

/** Pieces borrowed for this list; no lender means the club. */
public record Borrow(Id id, List<Content> things, Optional<Id> lender) {

    public Borrow {
        things = List.copyOf(things);
    }
}
