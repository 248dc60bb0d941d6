package org.cantonment.domain.finding;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/** Add a unit to a list, contingent or formation entry; under the word support where that is said. */
public record AddUnit(
        Id parent, boolean support, Optional<String> billet, Id unit, OptionalInt strength, int count) implements Action {
}
