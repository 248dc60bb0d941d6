package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Strike the entry with all that stands in it. */
public record RemoveEntry(Id entry) implements Action {
}
