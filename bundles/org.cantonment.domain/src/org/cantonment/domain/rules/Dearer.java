package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Each such unit in the list beyond so many costs so many points more. */
public record Dearer(Id id, int points, int beyond, Validity when) implements Fact {
}
