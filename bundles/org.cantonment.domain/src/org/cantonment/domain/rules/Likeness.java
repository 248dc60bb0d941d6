package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;

/** How true a piece must be to what it stands for. Its facts are Allows, Stands, Turns and OneTable lines. */
public record Likeness(Id id, String label, List<Fact> facts, List<String> notes) implements Ruled {

    public Likeness {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
