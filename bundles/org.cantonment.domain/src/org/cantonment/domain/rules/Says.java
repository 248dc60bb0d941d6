package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The limit's own words for what is wrong. */
public record Says(Id id, String text, Validity when) implements Fact {
}
