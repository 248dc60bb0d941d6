package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** So many of the first before so many of the other are taken. */
public record Before(Id id, int firstCount, Id first, int thenCount, Id then, Validity when) implements Fact {
}
