package org.cantonment.rules.view;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;

/**
 * A limit at this time: its lines after eras and layers, and its own words.
 *
 * @param conditions what must be so for its lines to hold
 */
public record LimitView(Id id, String title, Severity severity, Optional<String> says, Optional<String> mend,
        List<ProvidedView> conditions, List<LimitLine> lines) {
}
