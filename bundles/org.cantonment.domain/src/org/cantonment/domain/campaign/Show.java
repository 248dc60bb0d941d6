package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Who may see what, from when. */
public record Show(Id id, Shown what, boolean all, List<Id> players, After after) {

    public Show {
        players = List.copyOf(players);
    }
}
