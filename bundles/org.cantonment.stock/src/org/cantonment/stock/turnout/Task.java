package org.cantonment.stock.turnout;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Allowance;

/** A list that is to be fielded: what it needs, and what may stand for what when it is played. */
public record Task(Id list, List<Requirement> needs, Allowance allowance) {

    public Task {
        needs = List.copyOf(needs);
    }
}
