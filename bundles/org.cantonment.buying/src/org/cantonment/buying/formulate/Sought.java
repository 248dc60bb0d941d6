package org.cantonment.buying.formulate;

import java.util.List;

import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.force.Requirement;

/**
 * What is to be fielded where it is still open: how many there are of each unit is itself to be chosen.
 *
 * @param begun a programme in which these numbers are chosen
 * @param units the units there may be
 * @param missing what a piece costs that is missing; 0 if none may be
 */
public record Sought(Programme begun, List<Open> units, long missing) {

    /**
     * A unit there may be.
     *
     * @param times how many of it, in columns of the programme
     * @param besides how many more
     * @param most more there never are
     * @param needs what one of it needs
     */
    public record Open(Sum times, long besides, long most, List<Requirement> needs) {

        public Open {
            needs = List.copyOf(needs);
        }
    }

    public Sought {
        units = List.copyOf(units);
    }
}
