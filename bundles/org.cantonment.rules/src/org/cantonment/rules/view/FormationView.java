package org.cantonment.rules.view;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;

/** A formation at this time, with the points it costs for itself and its billets in the order of the text. */
public record FormationView(Id id, String title, int index, Set<Id> kinds, Set<Id> sides, Permission permission,
        long points, Optional<Id> pointsRule, List<SurchargeView> surcharges, List<BilletView> billets) implements Choice {

    @Override
    public long leastPoints() {
        return points;
    }
}
