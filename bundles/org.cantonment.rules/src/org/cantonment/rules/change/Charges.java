package org.cantonment.rules.change;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Arithmetic;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Rounded;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.TallyLine;
import org.cantonment.rules.muster.TallyPart;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.SurchargeView;

/** What lines that hang on the rest of the list add to a price: what they do add, and what they add at the least. */
final class Charges {

    private final long[] each;

    /** What they add to one of every entry of a muster. */
    Charges(Muster muster) {
        each = new long[muster.nodes().size()];
        if (muster.ruling().surcharged().isEmpty()) {
            return;
        }
        Iterator<TallyLine> lines = muster.tally().lines().iterator();
        for (Node node : muster.nodes()) {
            if (node.choice() != null) {
                TallyLine line = lines.next();
                each[node.index()] = node.copies() == 0 ? 0 : each(node.choice(), line) / node.copies();
            }
        }
    }

    private static long each(Choice choice, TallyLine line) {
        Set<Id> own = new HashSet<>();
        choice.surcharges().forEach(view -> own.add(view.id()));
        long points = 0;
        for (TallyPart part : line.parts()) {
            points += part.rule().filter(own::contains).isPresent() ? part.points() : 0;
        }
        return points;
    }

    /** What they add to one of the entry of this number. */
    long of(int node) {
        return each[node];
    }

    /** A price with what was added; that never makes it less than nothing. */
    static long price(long plain, long added) {
        return added == 0 ? plain : Math.max(0, plain + added);
    }

    /** What one costs at the least, whatever else is in the list. */
    static long least(Choice choice, long plain, int strength) {
        long least = plain;
        for (SurchargeView line : choice.surcharges()) {
            boolean falls = line.surcharge().cheaper();
            if (!falls && nonNegative(line.amount())) {
                continue;
            }
            if (!falls || !(line.amount().said() instanceof Figure figure) || figure.value().number() < 0) {
                return Math.min(0, plain);
            }
            Ratio off = figure.value().negated();
            Ratio all = line.surcharge().each() ? off.times(Ratio.of(Math.max(1, strength))) : off;
            least += all.beyond() ? 0 : all.up().number();
        }
        return choice.surcharges().isEmpty() ? plain : Math.max(Math.min(0, plain), least);
    }

    /** Whether a number is never below nothing, as far as that can be told without a list. */
    private static boolean nonNegative(Formula formula) {
        if (formula.said() instanceof Figure figure) {
            return figure.value().number() >= 0;
        }
        if (formula.said() instanceof Quantity quantity) {
            return quantity.measure() != Quantity.Measure.POINTS;
        }
        if (formula.said() instanceof Own own) {
            return own.what() != Own.What.POINTS;
        }
        if (formula.said() instanceof Given given) {
            return given.what() != Given.What.POINTS_USED;
        }
        if (formula.said() instanceof Arithmetic arithmetic && arithmetic.operator() == Arithmetic.Operator.MINUS) {
            return false;
        }
        boolean counts = formula.said() instanceof OptionsTaken || formula.said() instanceof PiecesOf
                || formula.said() instanceof Gathering gathering && gathering.act() == Gathering.Act.COUNT;
        boolean passes = formula.said() instanceof Arithmetic || formula.said() instanceof Rounded
                || formula.said() instanceof NameUse || formula.said() instanceof Gathering;
        return counts || passes && formula.parts().stream().allMatch(Charges::nonNegative);
    }
}
