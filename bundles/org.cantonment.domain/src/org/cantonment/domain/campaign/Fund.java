package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** A campaign fund and what it starts with. */
public record Fund(
        Id id, String label, int start, List<Pays> pays, List<Rebuilds> rebuilds, List<FundCap> caps,
        List<String> notes) implements Titled {

    public Fund {
        pays = List.copyOf(pays);
        rebuilds = List.copyOf(rebuilds);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }
}
