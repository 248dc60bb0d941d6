package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** What a player is in a round: attacker, defender, newcomer, ally. */
public record Role(Id id, String label, List<String> notes) implements Titled {

    public Role {
        notes = List.copyOf(notes);
    }
}
