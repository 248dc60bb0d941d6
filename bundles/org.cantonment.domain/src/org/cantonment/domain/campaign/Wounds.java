package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Rounding;

/** The share of the destroyed that are only wounded, and the rounds they miss. */
public record Wounds(Id id, int percent, Rounding rounding, int rounds, Validity when) {
}
