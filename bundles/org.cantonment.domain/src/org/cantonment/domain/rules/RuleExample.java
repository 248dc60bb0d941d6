package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.force.Body;

/** A trial list that the organiser wrote beside the rules, and what it must give. */
public record RuleExample(
        Id id, String label, OptionalInt round, Optional<Id> era, OptionalInt points, Body body,
        List<Expectation> gives, List<String> notes) implements Titled {

    public RuleExample {
        gives = List.copyOf(gives);
        notes = List.copyOf(notes);
    }
}
