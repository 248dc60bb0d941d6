package org.cantonment.buying.plan;

import org.cantonment.stock.likeness.Conversion;

/** A conversion made so many times in a stage, by one of those who order. */
public record Conversions(Conversion conversion, int times, int stage, int person) {
}
