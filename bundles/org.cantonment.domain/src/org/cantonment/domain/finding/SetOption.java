package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Take the option so many times; 0 strikes it. */
public record SetOption(Id entry, String option, int count) implements Action {
}
