package org.cantonment.stock.turnout;

import org.cantonment.stock.likeness.Conversion;

/** A conversion that a turnout would have made, so many times. */
public record Worked(Conversion conversion, int times) {
}
