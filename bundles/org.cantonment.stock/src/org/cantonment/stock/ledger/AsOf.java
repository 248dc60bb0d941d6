package org.cantonment.stock.ledger;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How much of a season is looked at.
 *
 * @param week what was known when this week was over; empty for all that is known now
 * @param day what had happened when this day was over; empty for all that is known
 */
public record AsOf(OptionalInt week, Optional<LocalDate> day) {

    /** All that is known now. */
    public static final AsOf NOW = new AsOf(OptionalInt.empty(), Optional.empty());

    /** What was known when this week was over. */
    public static AsOf week(int week) {
        return new AsOf(OptionalInt.of(week), Optional.empty());
    }

    /** What had happened when this day was over, as it is known now. */
    public static AsOf day(LocalDate day) {
        return new AsOf(OptionalInt.empty(), Optional.of(day));
    }
}
