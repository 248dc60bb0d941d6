package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.shelf.Held;

/** Something happened to these pieces. */
public record Moved(MoveVerb verb, List<Held> things) implements Doing {

    public Moved {
        things = List.copyOf(things);
    }
}
