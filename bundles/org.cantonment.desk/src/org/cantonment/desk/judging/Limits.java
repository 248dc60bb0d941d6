package org.cantonment.desk.judging;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.TakesRole;
import org.cantonment.domain.common.Id;

/** Which of a round's limits of points holds for a player. */
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
		PointsLimit own = null;
		PointsLimit byRole = null;
		PointsLimit all = null;
		for (PointsLimit limit : round.limits()) {
			if (limit.players().isEmpty()) {
				all = all == null ? limit : all;
			} else if (player.isPresent() && limit.players().contains(player.get())) {
				own = own == null ? limit : own;
			} else if (limit.players().stream().anyMatch(roles::contains)) {
				byRole = byRole == null ? limit : byRole;
			}
		}
		return Optional.ofNullable(own != null ? own : byRole != null ? byRole : all);
	}
}
