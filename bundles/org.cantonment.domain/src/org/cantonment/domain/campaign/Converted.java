package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.shelf.Held;

/** Worked these over into another. */
public record Converted(List<Held> things, Held into) implements Doing {

    public Converted {
        things = List.copyOf(things);
    }
}
