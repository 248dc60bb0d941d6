package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Setting;

/** One step of the chain that parts equals, by its name in the catalogue. */
public record TieStep(String name, List<Setting> settings) {

    public TieStep {
        settings = List.copyOf(settings);
    }
}
