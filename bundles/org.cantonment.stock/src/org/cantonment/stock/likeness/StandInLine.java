package org.cantonment.stock.likeness;

import java.util.Optional;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;

/**
 * A line with its names looked up.
 *
 * @param types the piece types that may stand, named as such or by a family
 * @param units the units whose models may stand, with the models of each
 * @param forTypes the piece types they may stand for
 * @param forUnits the units whatever of which they may stand for, with the models of each
 */
record StandInLine(
        StandIn standIn, Set<Id> types, Map<Id, Set<Id>> units, Set<Id> forTypes, Map<Id, Set<Id>> forUnits) {

    /** The types that may stand by this line for a need of these types, of an entry of this unit. */
    Set<Id> standing(Set<Id> needed, Optional<Id> unit) {
        Set<Id> may = new TreeSet<>();
        if (needed.stream().anyMatch(forTypes::contains)) {
            may.addAll(types);
            units.values().forEach(may::addAll);
        }
        Set<Id> whole = unit.map(forUnits::get).orElse(null);
        if (whole != null) {
            may.addAll(types);
            for (Set<Id> models : units.values()) {
                if (needed.stream().anyMatch(type -> !models.contains(type))) {
                    models.stream().filter(type -> !whole.contains(type)).forEach(may::add);
                }
            }
        }
        return may;
    }
}
