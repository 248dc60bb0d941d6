package org.cantonment.rules.compile;

import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Comparison.Relation;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.expression.Selection;

/**
 * What makes two lines with 'always' the same line: what they measure, from which end they bind it, and of whom, if they
 * ask each of somebody. What is no comparison is the same only as itself.
 *
 * @param each whom each of is asked; null if all is asked at once
 * @param measured the left side of the comparison, or the whole
 * @param end from which end: 1 at least, -1 at most, 0 for what is no comparison of more and less
 */
record AlwaysKey(Selection each, Expression measured, int end) {

    static AlwaysKey of(Always always) {
        Expression said = always.expression();
        Selection each = said instanceof Gathering gathering && gathering.act() == Gathering.Act.EACH ? gathering.over()
                : null;
        Comparison comparison = comparison(always);
        return comparison == null || end(comparison.relation()) == 0 ? new AlwaysKey(each, said, 0)
                : new AlwaysKey(each, comparison.left(), end(comparison.relation()));
    }

    private static Comparison comparison(Always always) {
        Expression said = always.expression();
        Expression inner = said instanceof Gathering gathering && gathering.act() == Gathering.Act.EACH
                ? gathering.body() : said;
        return inner instanceof Comparison comparison ? comparison : null;
    }

    private static int end(Relation relation) {
        return switch (relation) {
            case AT_LEAST, MORE -> 1;
            case AT_MOST, LESS -> -1;
            case IS, IS_NOT -> 0;
        };
    }

    /** How the upper line compares with the lower one of the same key; only numbers can be told. */
    static Strictness strictness(Always lower, Always upper) {
        if (lower.expression().equals(upper.expression())) {
            return Strictness.SAME;
        }
        Comparison from = comparison(lower);
        Comparison to = comparison(upper);
        if (from == null || to == null || from.relation() != to.relation() || end(from.relation()) == 0
                || !(from.right() instanceof Figure was) || !(to.right() instanceof Figure now)) {
            return Strictness.OTHER;
        }
        return now.value().compareTo(was.value()) * end(from.relation()) > 0 ? Strictness.STRICTER : Strictness.LOOSER;
    }
}
