package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The unit that takes its place; counted by the difference of points where that is said. */
public record Successor(Id id, Id unit, boolean difference, Validity when) implements Fact {
}
