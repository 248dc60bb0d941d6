package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/** One player's list. What it leaves out (rules, era, points) its round supplies. */
public record ForceList(
        Id id, Optional<Id> player, OptionalInt round, List<Id> rules, Optional<Id> era, OptionalInt points,
        Body body, List<Contingent> contingents, List<Borrow> borrowed, List<Brought> brought, List<String> notes) {

    public ForceList {
        rules = List.copyOf(rules);
        contingents = List.copyOf(contingents);
        borrowed = List.copyOf(borrowed);
        brought = List.copyOf(brought);
        notes = List.copyOf(notes);
    }
}
