package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Another name for it. */
public record Called(Id id, String text, Validity when) implements Fact {
}
