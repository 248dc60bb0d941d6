package org.cantonment.rules.compile;

import org.cantonment.domain.common.Span;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Costs;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Keep;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Surcharge;

/** What a line does to another of the same key. */
enum Strictness {
    SAME, STRICTER, LOOSER, OTHER;

    /** How the upper line compares with the lower one. */
    static Strictness of(Fact lower, Fact upper) {
        if (lower instanceof Strength from && upper instanceof Strength to) {
            return cost(from.cost(), to.cost());
        }
        if (lower instanceof Costs from && upper instanceof Costs to) {
            return number(from.points(), to.points());
        }
        if (lower instanceof Bound from && upper instanceof Bound to && from.measure() == to.measure()
                && from.perCount() == to.perCount()) {
            return span(from.span(), to.span());
        }
        if (lower instanceof Billet from && upper instanceof Billet to && from.places().size() == 1
                && to.places().size() == 1 && from.places().get(0).of().equals(to.places().get(0).of())) {
            return span(from.places().get(0).span(), to.places().get(0).span());
        }
        if (lower instanceof Keep from && upper instanceof Keep to) {
            return number(to.changes(), from.changes());
        }
        return lower instanceof Surcharge from && upper instanceof Surcharge to ? surcharge(from, to) : OTHER;
    }

    private static Strictness surcharge(Surcharge lower, Surcharge upper) {
        if (lower.amount().equals(upper.amount())) {
            return SAME;
        }
        if (!(lower.amount() instanceof Figure from) || !(upper.amount() instanceof Figure to)) {
            return OTHER;
        }
        return to.value().compareTo(from.value()) > 0 == lower.cheaper() ? LOOSER : STRICTER;
    }

    /** How a span compares with the one below it. */
    static Strictness span(Span lower, Span upper) {
        int max = Integer.compare(lower.max(), upper.max());
        int min = Integer.compare(upper.min(), lower.min());
        if (max == 0 && min == 0) {
            return SAME;
        }
        return max >= 0 && min >= 0 ? STRICTER : max <= 0 && min <= 0 ? LOOSER : OTHER;
    }

    private static Strictness cost(Cost lower, Cost upper) {
        return lower.each() != upper.each() ? OTHER : number(lower.points(), upper.points());
    }

    private static Strictness number(int lower, int upper) {
        return lower == upper ? SAME : upper > lower ? STRICTER : LOOSER;
    }
}
