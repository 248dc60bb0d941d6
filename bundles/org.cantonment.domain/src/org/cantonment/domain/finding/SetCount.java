package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Let the entry stand for so many. */
public record SetCount(Id entry, int count) implements Action {
}
