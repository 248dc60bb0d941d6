package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;

/** A unit of units. Its facts are Billet, Costs, Surcharge, Let, Membership, SideOf, Availability, Called and Without lines. */
public record Formation(Id id, String label, List<Fact> facts, List<String> notes) implements Ruled {

    public Formation {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
