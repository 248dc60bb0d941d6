package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A layer's lines for something that a book below it says. */
public record Change(Id id, Direction direction, Id target, Validity when, List<Fact> facts, List<String> notes) {

    public Change {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
