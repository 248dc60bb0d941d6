package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.common.Validity;

/** What games cost and what comes back. */
public record Casualties(
        Id id, String label, Validity when, List<Destroys> destroys, List<Wounds> wounds, List<Pays> pays,
        List<Rebuilds> rebuilds, List<FundCap> caps, List<String> notes) implements Titled {

    public Casualties {
        destroys = List.copyOf(destroys);
        wounds = List.copyOf(wounds);
        pays = List.copyOf(pays);
        rebuilds = List.copyOf(rebuilds);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }
}
