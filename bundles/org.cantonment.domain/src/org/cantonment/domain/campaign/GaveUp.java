package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.shelf.Held;

/** Gave these up for good. */
public record GaveUp(List<Held> things) implements Doing {

    public GaveUp {
        things = List.copyOf(things);
    }
}
