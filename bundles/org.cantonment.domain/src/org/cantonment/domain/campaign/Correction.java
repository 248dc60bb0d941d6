package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Corrects a closed week without changing it. */
public record Correction(Id id, int week, String reason, List<Struck> lines) {

    public Correction {
        lines = List.copyOf(lines);
    }
}
