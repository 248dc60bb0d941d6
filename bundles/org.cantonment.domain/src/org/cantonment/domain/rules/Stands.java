package org.cantonment.domain.rules;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/**
 * These pieces, units or families may stand for those, up to a share of the pieces, and only with the opponent's
 * leave where that is said. One way only.
 */
public record Stands(
        Id id, List<Id> what, List<Id> standFor, OptionalInt percent, boolean leave, Validity when) implements Fact {

    public Stands {
        what = List.copyOf(what);
        standFor = List.copyOf(standFor);
    }
}
