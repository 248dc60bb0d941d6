package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A dispensation: this player is let off this. */
public record Excuse(Id id, Id player, Excused from, Validity when, Id by, String reason) {
}
