package org.cantonment.rules.expression;

import java.util.IdentityHashMap;
import java.util.Map;

import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Arithmetic.Operator;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.EraIs;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.Negation;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Rounded;
import org.cantonment.domain.expression.YesNo;
import org.cantonment.rules.view.Formula;

/**
 * Works formulas out over one field. What a name stands for is worked out once for every element that it is asked of. An
 * answer that does not hang on a gap is given in spite of it: a no among things that must all be so is a no.
 */
public final class Evaluator {

    /** So many steps a line may take: questions, each with the entries that it has to look at. */
    public static final int MOST_STEPS = 1_000_000;

    private static final int CANCEL_EVERY = 4096;

    private final Field field;
    private final Map<Formula, Value> named = new IdentityHashMap<>();
    private int steps;
    private int nextCancel = CANCEL_EVERY;

    /** An evaluator for one field, for use by one thread. */
    public Evaluator(Field field) {
        this.field = field;
    }

    /**
     * What a formula comes to, with a fresh count of steps.
     *
     * @param here what is asked: all, or one element
     * @param own the element that 'its' means; {@link Field#ALL} if there is none
     * @throws org.cantonment.domain.common.Cancelled if the field's token says so
     */
    public Value value(Formula formula, int here, int own) {
        steps = 0;
        nextCancel = CANCEL_EVERY;
        return value(formula, new Frame(here, own));
    }

    /** How many steps the last answer took. */
    public int steps() {
        return steps;
    }

    /** Where something is asked, and what names came to there. */
    private static final class Frame {
        private final int element;
        private final int own;
        private Map<Formula, Value> named;

        Frame(int element, int own) {
            this.element = element;
            this.own = own;
        }

        int element() {
            return element;
        }

        Map<Formula, Value> named() {
            if (named == null) {
                named = new IdentityHashMap<>(4);
            }
            return named;
        }
    }

    private Value value(Formula formula, Frame frame) {
        if (over(1)) {
            return Gap.TOO_LONG;
        }
        Expression said = formula.said();
        if (said instanceof Figure figure) {
            return Value.of(figure.value());
        }
        if (said instanceof Quantity quantity) {
            return quantity(quantity, formula, frame);
        }
        if (said instanceof NameUse) {
            return name(formula.part(), frame);
        }
        if (said instanceof Comparison comparison) {
            return comparison(comparison, value(formula.part(), frame), value(formula.parts().get(1), frame));
        }
        if (said instanceof Arithmetic arithmetic) {
            return arithmetic(arithmetic, value(formula.part(), frame), value(formula.parts().get(1), frame));
        }
        if (said instanceof Rounded rounded) {
            Value number = value(formula.part(), frame);
            return number instanceof Amount exact ? Value.of(rounded.round(exact.ratio())) : number;
        }
        if (said instanceof Logic logic) {
            return logic(formula, logic.all() ? Answer.NO : Answer.YES, frame);
        }
        if (said instanceof Negation) {
            Value of = value(formula.part(), frame);
            return of instanceof Answer answer ? Value.of(answer == Answer.NO) : of;
        }
        return said instanceof Gathering gathering ? new Gatherer(gathering.act()).gather(formula, frame)
                : asked(said, formula, frame);
    }

    /** What is asked of a fixed stretch is the same wherever it is asked. */
    private Value quantity(Quantity quantity, Formula formula, Frame frame) {
        boolean fixed = frame.element() == Field.ALL || quantity.in() != Stretch.HERE;
        Value known = fixed ? named.get(formula) : null;
        if (known != null) {
            return known;
        }
        if (over(field.size(fixed ? Field.ALL : frame.element()))) {
            return Gap.TOO_LONG;
        }
        Value value = field.quantity(quantity, formula.of(), frame.element());
        if (fixed) {
            named.put(formula, value);
        }
        return value;
    }

    private Value asked(Expression said, Formula formula, Frame frame) {
        if (said instanceof YesNo answer) {
            return Value.of(answer.yes());
        }
        if (said instanceof Given given) {
            return field.given(given.what());
        }
        if (said instanceof EraIs era) {
            return field.eraIs(era.eras());
        }
        if (said instanceof Own own) {
            return frame.own == Field.ALL ? Gap.NOBODY : over(field.size(frame.own)) ? Gap.TOO_LONG
                    : Value.of(field.own(own.what(), frame.own));
        }
        if (over(field.size(frame.element()))) {
            return Gap.TOO_LONG;
        }
        return said instanceof PiecesOf pieces ? field.pieces(pieces, frame.element())
                : Value.of(field.options(((OptionsTaken) said).option(), formula.of(), frame.element()));
    }

    private boolean over(int more) {
        steps += more;
        if (steps > nextCancel) {
            field.cancel().check();
            nextCancel = steps + CANCEL_EVERY;
        }
        return steps > MOST_STEPS;
    }

    private Value name(Formula stands, Frame frame) {
        Map<Formula, Value> names = frame.element() == Field.ALL && !stands.asksOwn() ? named : frame.named();
        Value known = names.get(stands);
        if (known == null) {
            known = value(stands, frame);
            if (known != Gap.TOO_LONG) {
                names.put(stands, known);
            }
        }
        return known;
    }

    private static Value comparison(Comparison comparison, Value left, Value right) {
        if (left instanceof Gap || right instanceof Gap) {
            return graver(left, right);
        }
        int compared = left instanceof Amount some && right instanceof Amount other
                ? some.ratio().compareTo(other.ratio()) : left == right ? 0 : 1;
        return Value.of(comparison.relation().holds(compared));
    }

    private static Value arithmetic(Arithmetic arithmetic, Value left, Value right) {
        if (!(left instanceof Amount some) || !(right instanceof Amount other)) {
            return graver(left, right);
        }
        if (arithmetic.operator() == Operator.DIVIDED_BY && other.ratio().equals(Ratio.ZERO)) {
            return Gap.BY_NOTHING;
        }
        return Value.of(arithmetic.operator().of(some.ratio(), other.ratio()));
    }

    /** Of two values, one at least a gap, the gap of the rule's own fault, else the first. */
    private static Value graver(Value left, Value right) {
        boolean second = !(left instanceof Gap) || right instanceof Gap gap && !gap.unknown() && ((Gap) left).unknown();
        return second ? right : left;
    }

    private Value logic(Formula formula, Answer decides, Frame frame) {
        Value result = decides == Answer.NO ? Answer.YES : Answer.NO;
        for (Formula part : formula.parts()) {
            Value value = value(part, frame);
            if (value == decides || value == Gap.TOO_LONG) {
                return value;
            }
            result = value instanceof Gap ? result instanceof Gap ? graver(result, value) : value : result;
        }
        return result;
    }

    /** Goes through the elements that are meant. */
    private final class Gatherer {
        private final Gathering.Act act;
        private Ratio sum = Ratio.ZERO;
        private Ratio best;
        private Gap gap;

        Gatherer(Gathering.Act act) {
            this.act = act;
        }

        Value gather(Formula formula, Frame frame) {
            int at = field.next(formula.of(), frame.element(), 0);
            while (at >= 0) {
                Value value = value(formula.part(), new Frame(at, at));
                if (value == Gap.TOO_LONG || act == Gathering.Act.EACH && value == Answer.NO
                        || act == Gathering.Act.ANY && value == Answer.YES) {
                    return value;
                }
                take(value, field.copies(at, frame.element()));
                at = field.next(formula.of(), frame.element(), at + 1);
            }
            if (gap != null) {
                return gap;
            }
            return switch (act) {
                case EACH -> Answer.YES;
                case ANY -> Answer.NO;
                case COUNT, SUM -> Value.of(sum);
                case GREATEST, LEAST -> best == null ? Gap.NOBODY : Value.of(best);
            };
        }

        private void take(Value value, long copies) {
            if (value instanceof Gap some) {
                gap = gap == null || gap.unknown() ? some : gap;
            } else if (value instanceof Amount amount) {
                sum = sum.plus(amount.ratio().times(Ratio.of(copies)));
                int compared = best == null ? 0 : amount.ratio().compareTo(best);
                best = best == null || (act == Gathering.Act.GREATEST ? compared > 0 : compared < 0) ? amount.ratio()
                        : best;
            } else if (act == Gathering.Act.COUNT && value == Answer.YES) {
                sum = sum.plus(Ratio.of(copies));
            }
        }
    }
}
