package org.cantonment.stock.eras;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * What a shelf can field in one era.
 *
 * @param units each unit that may be taken, in the order of the books
 * @param pieces how many pieces and unbuilt parts some unit can use then
 * @param army the units of most points at once
 */
public record EraAnswer(Id era, List<UnitAnswer> units, int pieces, Army army) {

    public EraAnswer {
        units = List.copyOf(units);
    }
}
