package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.force.Taken;
import org.cantonment.rules.view.UnitView;

/**
 * One way to take a unit.
 *
 * @param options those taken at least once
 * @param points what one such unit costs by itself
 */
record Variant(UnitView unit, int strength, List<Taken> options, long points) {

    Variant {
        options = List.copyOf(options);
    }

    /** What one costs at the least, whatever else is in the list. */
    long least() {
        return Charges.least(unit, points, strength);
    }

    int times(String option) {
        int times = 0;
        for (Taken taken : options) {
            times += taken.option().equals(option) ? taken.count() : 0;
        }
        return times;
    }

    /** How many options are taken, each as often as it is. */
    int extras() {
        int sum = 0;
        for (Taken taken : options) {
            sum += taken.count();
        }
        return sum;
    }
}
