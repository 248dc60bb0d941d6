package org.cantonment.desk.judging;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.TakesRole;
import org.cantonment.domain.common.Id;
import org.cantonment.rules.RoundLimit;

/** Which of a round's limits of points holds for a player, with the roles that the round says the player takes. */
final class Limits {
    private Limits() {
    }

    /** The player's own line, else that of a role the player takes in the round, else the one for all. */
    static Optional<PointsLimit> of(Round round, Optional<Id> player) {
        Set<Id> roles = new HashSet<>();
        for (Deed deed : round.deeds()) {
            if (player.isPresent() && deed.who().equals(player.get()) && deed.doing() instanceof TakesRole takes) {
                roles.add(takes.role());
            }
        }
        return RoundLimit.of(round, player, roles);
    }
}
