package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The least truth that is allowed. */
public record Allows(Id id, Level level, Validity when) implements Fact {
}
