package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The limit's own words for what would mend it. */
public record MendText(Id id, String text, Validity when) implements Fact {
}
