package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.Negation;
import org.cantonment.domain.expression.Rounded;
import org.cantonment.domain.expression.YesNo;
import org.cantonment.rules.expression.Answer;
import org.cantonment.rules.expression.Evaluator;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.Phrasing;

/**
 * Tells why something is not so: what was compared, what each side came to, and what the names and questions in it came
 * to.
 */
final class Telling {

    private static final int MOST_FACTS = 8;

    private final Evaluator evaluator;
    private final Phrasing phrasing;
    private final int element;
    private final Set<String> facts = new LinkedHashSet<>();

    Telling(Evaluator evaluator, Phrasing phrasing, int element) {
        this.evaluator = evaluator;
        this.phrasing = phrasing;
        this.element = element;
    }

    /** "count of Eyes is 2 and should be at least 3 (Wheels divided by 4 rounded up); Wheels is 9 (count of Armour)". */
    String why(Formula formula) {
        StringBuilder text = new StringBuilder(lacking(formula));
        List<String> all = new ArrayList<>(facts);
        for (int i = 0; i < Math.min(MOST_FACTS, all.size()); i++) {
            text.append("; ").append(all.get(i));
        }
        return text.append(all.size() > MOST_FACTS ? " …" : "").toString();
    }

    private Value value(Formula formula) {
        return evaluator.value(formula, element, element);
    }

    private String lacking(Formula formula) {
        Expression said = formula.said();
        if (said instanceof Comparison comparison) {
            return comparison(comparison, formula.parts().get(0), formula.parts().get(1));
        }
        if (said instanceof NameUse name) {
            return name.name() + " is not so: " + lacking(formula.part());
        }
        if (said instanceof Logic logic && logic.all()) {
            for (Formula part : formula.parts()) {
                if (value(part) == Answer.NO) {
                    return lacking(part);
                }
            }
        }
        if (said instanceof Logic) {
            List<String> parts = new ArrayList<>();
            formula.parts().forEach(part -> parts.add(lacking(part)));
            return "none of these is so: " + String.join(", or ", parts);
        }
        formula.parts().forEach(this::gather);
        if (said instanceof Negation negation) {
            return phrasing.words(negation.of()) + ", and should not";
        }
        return (said instanceof YesNo ? "it" : phrasing.words(said)) + " is not so";
    }

    private String comparison(Comparison comparison, Formula left, Formula right) {
        left.parts().forEach(this::gather);
        if (left.said() instanceof NameUse) {
            gather(left);
        }
        String wanted = comparison.relation().words().replaceFirst("^is", "be");
        String fixed = comparison.relation() == Comparison.Relation.IS_NOT ? "not be" : wanted;
        String there = phrasing.words(left.said()) + " is " + value(left).words() + " and should " + fixed + ' ';
        if (right.said() instanceof Figure || right.said() instanceof YesNo) {
            return there + value(right).words();
        }
        right.parts().forEach(this::gather);
        if (right.said() instanceof NameUse) {
            gather(right);
        }
        return there + value(right).words() + " (" + phrasing.words(right.said()) + ')';
    }

    /** Notes what the questions and names in a formula came to. */
    private void gather(Formula formula) {
        Expression said = formula.said();
        if (said instanceof NameUse name) {
            Formula stands = formula.part();
            boolean plain = stands.said() instanceof Figure;
            facts.add(name.name() + " is " + value(formula).words()
                    + (plain ? "" : " (" + phrasing.words(stands.said()) + ')'));
            stands.parts().forEach(this::gather);
        } else if (said instanceof Arithmetic || said instanceof Rounded || said instanceof Logic
                || said instanceof Negation || said instanceof Comparison) {
            formula.parts().forEach(this::gather);
        } else if (!(said instanceof Figure) && !(said instanceof YesNo)) {
            String words = phrasing.words(said);
            facts.add(said instanceof Gathering && value(formula) instanceof Answer answer
                    ? words + ": " + answer.words() : words + " is " + value(formula).words());
        }
    }
}
