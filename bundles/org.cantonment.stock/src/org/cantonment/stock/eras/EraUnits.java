package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Allowance;

/**
 * An era as a shelf sees it.
 *
 * @param allowance what may stand for what then
 * @param units the units that may be taken then, in the order of the books
 */
public record EraUnits(Id era, Allowance allowance, List<FieldUnit> units) {

    public EraUnits {
        units = List.copyOf(units);
    }
}
