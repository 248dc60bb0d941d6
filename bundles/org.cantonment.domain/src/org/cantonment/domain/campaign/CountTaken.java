package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.shelf.Held;

/** Counted what is there. */
public record CountTaken(List<Held> things) implements Doing {

    public CountTaken {
        things = List.copyOf(things);
    }
}
