package org.cantonment.buying.plan;

import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.BenchTime.Measure;

/**
 * What can be built in a stage at the most.
 *
 * @param measure minutes, or parts
 * @param most so many of them, from 0
 */
public record Bench(Measure measure, int most) {

    /** @throws IllegalArgumentException if it is less than nothing */
    public Bench {
        if (most < 0) {
            throw new IllegalArgumentException("At the bench " + most + " " + measure);
        }
    }

    /** "3 hours 20 minutes", or "4 parts". */
    public String words(long amount) {
        return BenchTime.words(amount, measure);
    }

    /** How much of it work takes. */
    public long of(Work work) {
        return measure == Measure.MINUTES ? work.minutes() : work.parts();
    }
}
