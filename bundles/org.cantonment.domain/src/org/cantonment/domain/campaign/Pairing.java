package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.Validity;

/** A way of pairing, by its name in the catalogue. */
public record Pairing(Id id, String name, List<Setting> settings, Validity when) {

    public Pairing {
        settings = List.copyOf(settings);
    }
}
