package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** May be taken at such a time; with several lines, at any of them. */
public record Availability(Id id, Validity when) implements Fact {
}
