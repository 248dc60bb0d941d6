package org.cantonment.buying.plan;

import org.cantonment.stock.likeness.Conversion;

/** A conversion made so many times in a stage. */
public record Conversions(Conversion conversion, int times, int stage) {
}
