package org.cantonment.stock.session;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Allowance;

/** A player who plays this evening: what the list needs, and what may stand for what. */
public record Seat(Id player, Id list, List<Requirement> needs, Allowance allowance) {

    public Seat {
        needs = List.copyOf(needs);
    }
}
