package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/**
 * What a game costs: a count, a count in each so many, or a percentage; of these or of all; by a named means (Roll,
 * Choice).
 */
public record Destroys(
        Id id, Outcome outcome, OptionalInt count, OptionalInt per, OptionalInt percent, List<Id> what,
        Optional<String> means, Validity when) {

    public Destroys {
        what = List.copyOf(what);
    }
}
