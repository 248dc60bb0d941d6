package org.cantonment.buying.plan;

import java.time.LocalDate;
import java.util.Optional;

import org.joda.money.Money;

/**
 * A time to buy.
 *
 * @param ordered the day of the order; empty where delivery does not matter
 * @param stands the day on which the targets of the stage must stand; empty where delivery does not matter
 * @param budget what may be spent; empty for no end
 */
public record Stage(Optional<LocalDate> ordered, Optional<LocalDate> stands, Optional<Money> budget) {

    /** No dates, no end of money. */
    public static final Stage OPEN = new Stage(Optional.empty(), Optional.empty(), Optional.empty());

    /** The same with so much to spend. */
    public Stage with(Money most) {
        return new Stage(ordered, stands, Optional.of(most));
    }

    /** Whether what is ordered in this stage and takes so many days is there when another one stands. */
    public boolean reaches(Stage later, int days) {
        return ordered.isEmpty() || later.stands.isEmpty() || !ordered.get().plusDays(days).isAfter(later.stands.get());
    }
}
