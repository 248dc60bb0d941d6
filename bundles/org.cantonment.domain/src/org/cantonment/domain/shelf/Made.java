package org.cantonment.domain.shelf;

import java.util.List;

import org.cantonment.domain.common.Id;

/** What became of the contents of an opened box or part. */
public record Made(Id id, MadeAct act, List<Held> things) {

    public Made {
        things = List.copyOf(things);
    }
}
