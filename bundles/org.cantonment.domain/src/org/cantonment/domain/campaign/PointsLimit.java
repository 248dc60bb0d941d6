package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;

/** A round's limit, for all or for these roles and players only. */
public record PointsLimit(Id id, int points, List<Id> players) {

    public PointsLimit {
        players = List.copyOf(players);
    }
}
