package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Keep the list before, change at most so many units. */
public record Keep(Id id, int changes, Validity when) implements Fact {
}
