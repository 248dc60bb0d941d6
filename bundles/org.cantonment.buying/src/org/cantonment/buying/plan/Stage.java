package org.cantonment.buying.plan;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.shelf.BenchTime.Measure;
import org.joda.money.Money;

/**
 * A time to buy.
 *
 * @param ordered the day of the order; empty where delivery does not matter
 * @param stands the day on which the targets of the stage must stand; empty where delivery does not matter
 * @param budget what may be spent; empty for no end
 * @param bench how much can be built; empty for no end. Work for later rounds may be done in this one
 */
public record Stage(Optional<LocalDate> ordered, Optional<LocalDate> stands, Optional<Money> budget, Optional<Bench> bench) {

    /** No dates, no end of money or hours. */
    public static final Stage OPEN = new Stage(Optional.empty(), Optional.empty(), Optional.empty());

    /** No end of hours at the bench. */
    public Stage(Optional<LocalDate> ordered, Optional<LocalDate> stands, Optional<Money> budget) {
        this(ordered, stands, budget, Optional.empty());
    }

    /** The same with no end of money. */
    public Stage withoutBudget() {
        return new Stage(ordered, stands, Optional.empty(), bench);
    }

    /** The same, but so many parts can be built. */
    public Stage building(int parts) {
        return with(new Bench(Measure.PARTS, parts));
    }

    /** The same with so much time at the bench. */
    public Stage with(Bench most) {
        return new Stage(ordered, stands, budget, Optional.of(most));
    }

    /** The same with no end of time at the bench. */
    public Stage withoutBench() {
        return new Stage(ordered, stands, budget);
    }

    /** The same with so much to spend. */
    public Stage with(Money most) {
        return new Stage(ordered, stands, Optional.of(most), bench);
    }

    /** Whether what is ordered in this stage and takes so many days is there when another one stands. */
    public boolean reaches(Stage later, int days) {
        return ordered.isEmpty() || later.stands.isEmpty() || !ordered.get().plusDays(days).isAfter(later.stands.get());
    }
}
