package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.force.Requirement;

/**
 * A unit at one strength.
 *
 * @param points what it costs then, at least 0
 * @param needs what one such unit needs on the table; the entry in them does not matter
 */
public record Step(int strength, int points, List<Requirement> needs) {

    public Step {
        needs = List.copyOf(needs);
    }
}
