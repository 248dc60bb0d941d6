package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

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

    /** What an entry of the list takes: a unit, formation or support; empty if the list has no such entry. */
    public Optional<Id> takenAt(Id entry) {
        return Stream.concat(Stream.of(body), contingents.stream().map(Contingent::body))
                .map(part -> part.takenAt(entry)).flatMap(Optional::stream).findFirst();
    }
}
