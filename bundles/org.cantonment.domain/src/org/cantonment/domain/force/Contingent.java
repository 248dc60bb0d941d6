package org.cantonment.domain.force;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** Allies under a book of their own. */
public record Contingent(
        Id id, String label, List<Id> rules, OptionalInt points, Body body, List<String> notes) implements Titled {

    public Contingent {
        rules = List.copyOf(rules);
        notes = List.copyOf(notes);
    }
}
