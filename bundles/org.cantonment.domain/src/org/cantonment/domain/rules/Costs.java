package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A flat price, of a formation or of a unit without strengths. */
public record Costs(Id id, int points, Validity when) implements Fact {
}
