package org.cantonment.domain.rules;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** One table, one meaning: a type that stands for itself stands for nothing else that evening. */
public record OneTable(Id id, Validity when) implements Fact {
}
