package org.cantonment.domain.shelf;

import java.util.List;

import org.cantonment.domain.common.Id;

/** A player's wish for units, kinds or formations. */
public record WishFor(Id id, Taste taste, List<Id> what) {

    public WishFor {
        what = List.copyOf(what);
    }
}
