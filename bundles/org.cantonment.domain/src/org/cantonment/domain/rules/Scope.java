package org.cantonment.domain.rules;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/** Where a limit counts; the formation is given for EACH_OF alone. */
public record Scope(Reckoning reckoning, Optional<Id> formation) {

    /** All that stands under the rule set. */
    public static final Scope DEFAULT = new Scope(Reckoning.DEFAULT, Optional.empty());
}
