package org.cantonment.domain.campaign;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A dispensation: this player is let off this rule, at one unit if it is said. */
public record Excuse(Id id, Id player, Id rule, Optional<Id> at, Validity when, Id by, String reason) {
}
