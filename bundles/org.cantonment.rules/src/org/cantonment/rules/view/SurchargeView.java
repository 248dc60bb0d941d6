package org.cantonment.rules.view;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Surcharge;

/**
 * A line that makes something dearer or cheaper for what else is in the list, looked up.
 *
 * @param words for people: "dearer when count of Armour is more than 3"
 */
public record SurchargeView(Surcharge surcharge, String book, Formula amount, Optional<Formula> condition,
        String words) {

    /** The place of the line. */
    public Id id() {
        return surcharge.id();
    }
}
