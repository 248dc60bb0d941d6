package org.cantonment.domain.campaign;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** What a game pays into a fund. */
public record Pays(Id id, int amount, Id fund, boolean perGame, Optional<Outcome> outcome, Validity when) {
}
