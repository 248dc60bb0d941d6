package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Who did what; inner deeds belong to it, as losses to a game. */
public record Deed(Id id, Id who, Doing doing, Clauses clauses, List<Deed> inner, List<String> notes) {

    public Deed {
        inner = List.copyOf(inner);
        notes = List.copyOf(notes);
    }
}
