package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** What rebuilding one of these costs. */
public record Rebuilds(Id id, List<Id> what, int amount, Id fund, Validity when) {

    public Rebuilds {
        what = List.copyOf(what);
    }
}
