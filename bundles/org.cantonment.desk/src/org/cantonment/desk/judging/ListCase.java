package org.cantonment.desk.judging;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * All that a list is judged by. Two cases that are equal are judged alike.
 *
 * @param list      the list
 * @param campaign  the campaign it is for
 * @param occasion  when
 * @param ruling    the rules as they stand then; empty if nobody says which
 * @param situation the limit, the player, the lists before
 * @param unclear   what could not be told: no rules, no era, no such round
 */
public record ListCase(ForceList list, Optional<Id> campaign, Occasion occasion, Optional<Ruling> ruling,
        Situation situation, List<Finding> unclear) {
    public ListCase {
        unclear = List.copyOf(unclear);
    }

    /** Whether this case needs no new judgement after that one. Records that nobody changed are the same objects. */
    boolean sameAs(ListCase other) {
        return other != null && list == other.list && campaign.equals(other.campaign)
                && occasion.equals(other.occasion)
                && ruling.orElse(null) == other.ruling.orElse(null)
                && situation.equals(other.situation) && unclear.equals(other.unclear);
    }
}
