package org.cantonment.rules.check;

import org.cantonment.domain.common.Span;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.view.BoundView;

/**
 * A bound held against one ground, in exact fractions.
 *
 * @param value what there is: a count, or points
 * @param base what a share is taken of; 0 for other measures
 * @param groups how many times the span holds
 * @param most the most that is allowed, times the divisor; negative if there is no upper end
 * @param least the least that is allowed, times the divisor
 * @param divisor 1, or 100 for a share that is not rounded
 */
record Bounding(long value, long base, long groups, long most, long least, long divisor) {

    private static final long GREATEST = 1_000_000_000_000L;
    private static final int HUNDRED = 100;

    static Bounding of(BoundView view, Ground ground, long limit) {
        Bound bound = view.bound();
        Span span = bound.span();
        if (bound.measure() == Measure.COUNT || bound.measure() == Measure.POINTS) {
            long value = bound.measure() == Measure.COUNT ? ground.count(view.of()) : ground.points(view.of());
            long groups = view.per().empty() ? 1 : groups(bound, ground.count(view.per()));
            return new Bounding(value, 0, groups, span.bounded() ? span.max() * groups : -1, span.min() * groups, 1);
        }
        long base = bound.measure() == Measure.PERCENT_OF_LIMIT ? limit : ground.used();
        long fair = Math.max(0, Math.min(GREATEST, base));
        long most = span.bounded() ? fair * span.max() : -1;
        long least = fair * span.min();
        long value = ground.points(view.of());
        if (bound.rounding() == Rounding.EXACT) {
            return new Bounding(value, fair, 1, most, least, HUNDRED);
        }
        long up = bound.rounding() == Rounding.UP ? HUNDRED - 1 : 0;
        return new Bounding(value, fair, 1, most < 0 ? -1 : (most + up) / HUNDRED, (least + up) / HUNDRED, 1);
    }

    private static long groups(Bound bound, long there) {
        int size = Math.max(1, bound.perCount());
        return bound.rounding() == Rounding.UP ? (there + size - 1) / size : there / size;
    }

    boolean above() {
        return most >= 0 && Math.min(GREATEST, value) * divisor > most;
    }

    boolean below() {
        return Math.max(-GREATEST, Math.min(GREATEST, value)) * divisor < least;
    }

    /** By how much the value is above, as a fraction over the divisor. */
    long over() {
        return value * divisor - most;
    }

    /** By how much the value is below, as a fraction over the divisor. */
    long under() {
        return least - value * divisor;
    }

    /** Whole units of the value that lie above. */
    long wholeOver() {
        return (over() + divisor - 1) / divisor;
    }

    /** Whole units of the value that lack. */
    long wholeUnder() {
        return (under() + divisor - 1) / divisor;
    }
}
