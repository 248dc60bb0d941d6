package org.cantonment.stock.eras;

import org.cantonment.domain.common.Id;

/** So many of a unit at a strength, each at these points. */
public record Fielded(Id unit, int strength, int points, int count) {
}
