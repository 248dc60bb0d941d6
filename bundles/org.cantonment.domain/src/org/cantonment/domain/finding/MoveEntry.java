package org.cantonment.domain.finding;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/** Move the entry to another formation or billet. */
public record MoveEntry(Id entry, Id parent, Optional<String> billet) implements Action {
}
