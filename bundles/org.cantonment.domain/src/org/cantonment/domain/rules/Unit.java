package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;

/**
 * What a list is made of. Its facts are Membership, SideOf, Availability, Strength, Costs, Needs, Option, Dearer,
 * Surcharge, Let, Successor, Called and Without lines.
 */
public record Unit(Id id, String label, List<Fact> facts, List<String> notes) implements Ruled {

    public Unit {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
