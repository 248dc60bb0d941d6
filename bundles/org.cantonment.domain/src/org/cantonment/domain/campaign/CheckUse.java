package org.cantonment.domain.campaign;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Severity;

/** A check written by others, by its name, with its settings. */
public record CheckUse(Id id, String name, Optional<Severity> severity, List<Setting> settings, Validity when) {

    public CheckUse {
        settings = List.copyOf(settings);
    }
}
