package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** The deeds of one week. */
public record Week(
        Id id, int number, Optional<Id> campaign, List<Deed> deeds, List<Correction> corrections,
        List<Acceptance> acceptances, List<Sealing> sealings, List<String> notes) {

    public Week {
        deeds = List.copyOf(deeds);
        corrections = List.copyOf(corrections);
        acceptances = List.copyOf(acceptances);
        sealings = List.copyOf(sealings);
        notes = List.copyOf(notes);
    }
}
