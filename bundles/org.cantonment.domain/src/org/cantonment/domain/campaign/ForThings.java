package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.shelf.Held;

/** For these things. */
public record ForThings(List<Held> things) implements Exchange {

    public ForThings {
        things = List.copyOf(things);
    }
}
