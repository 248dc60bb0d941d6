package org.cantonment.rules;

import java.util.Collection;
import java.util.Optional;

import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.Id;

/** Which of a round's limits of points binds a player. */
public final class RoundLimit {

    private RoundLimit() {
    }

    /**
     * The limit that names the player; else one that names a role of his, the first that the round says; else the one for
     * all. Empty if the round sets none of these.
     */
    public static Optional<PointsLimit> of(Round round, Optional<Id> player, Collection<Id> roles) {
        Optional<PointsLimit> own = round.limits().stream()
                .filter(limit -> player.isPresent() && limit.players().contains(player.get())).findFirst();
        return own.or(() -> round.limits().stream().filter(limit -> limit.players().stream().anyMatch(roles::contains))
                .findFirst()).or(() -> round.limits().stream().filter(limit -> limit.players().isEmpty()).findFirst());
    }
}
