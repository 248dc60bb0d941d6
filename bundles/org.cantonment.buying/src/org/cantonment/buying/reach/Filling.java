package org.cantonment.buying.reach;

import java.util.List;

import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.Fielded;

/**
 * What stands in a formation.
 *
 * @param units the units, billet by billet; what lies within a formation comes behind it
 * @param needs what they need, each as an entry of its own
 */
public record Filling(List<Fielded> units, List<Requirement> needs) {

    public Filling {
        units = List.copyOf(units);
        needs = List.copyOf(needs);
    }

    /** How many pieces it needs, things that are no pieces among them. */
    public long needed() {
        return needs.stream().mapToLong(Requirement::count).sum();
    }
}
