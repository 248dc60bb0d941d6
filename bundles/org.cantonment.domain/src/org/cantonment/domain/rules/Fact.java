package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A line of a unit, formation, limit, likeness or change: one thing that holds at a time. */
public sealed interface Fact permits
        Membership, SideOf, Availability, Strength, Costs, Needs, Option, Dearer, Successor, Called, Without,
        Surcharge, Billet, Bound, Taking, Keep, Before, Let, Always, Provided, Says, MendText, Allows, Stands, Turns,
        OneTable {

    /** The place of the line: the card it stands under, and its number there. */
    Id id();

    /** When the line holds. */
    Validity when();
}
