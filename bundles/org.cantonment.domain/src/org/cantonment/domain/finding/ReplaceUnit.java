package org.cantonment.domain.finding;

import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/** Put another unit in the entry's place. */
public record ReplaceUnit(Id entry, Id unit, OptionalInt strength) implements Action {
}
