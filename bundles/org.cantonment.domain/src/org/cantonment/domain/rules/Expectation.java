package org.cantonment.domain.rules;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;

/**
 * What an example must give: nothing at all, or a finding of this severity of this rule, at this unit if it is
 * said.
 */
public record Expectation(Id id, boolean nothing, Optional<Severity> severity, Optional<Id> rule, Optional<Id> at) {
}
