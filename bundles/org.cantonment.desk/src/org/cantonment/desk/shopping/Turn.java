package org.cantonment.desk.shopping;

import java.util.Optional;

import org.cantonment.desk.judging.ListCase;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.force.ForceList;

/**
 * A round of a growth plan as it is asked about.
 *
 * @param written the player's list for it; empty if one is to be composed
 * @param about   what its list is judged by
 */
record Turn(Round round, Optional<ForceList> written, ListCase about) {
}
