package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Held;

/** Passed these to another player; without one, to the club. */
public record Passed(PassVerb verb, List<Held> things, Optional<Id> to) implements Doing {

    public Passed {
        things = List.copyOf(things);
    }
}
