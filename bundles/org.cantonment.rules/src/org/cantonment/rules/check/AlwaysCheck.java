package org.cantonment.rules.check;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Comparison;
import org.cantonment.domain.expression.Comparison.Relation;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.expression.Amount;
import org.cantonment.rules.expression.Answer;
import org.cantonment.rules.expression.Field;
import org.cantonment.rules.expression.Gap;
import org.cantonment.rules.expression.Value;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.AlwaysView;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Phrasing;
import org.cantonment.rules.view.Selector;

/** What must always be so: said as an expression, asked of all or of each. */
public final class AlwaysCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (Standing.Untold untold : about.standing().untold(about)) {
            gap(about, untold.limit(), untold.line().id(), untold.line().book(), untold.why(), sink);
        }
        for (LimitView limit : about.limits()) {
            Id told = null;
            for (LimitLine line : limit.lines()) {
                // A line stands twice where a layer changed what a name in it means: once is enough to be told.
                if (line instanceof AlwaysView view && !view.id().equals(told)) {
                    about.situation().cancel().check();
                    told = fails(about, limit, view, sink) ? view.id() : told;
                }
            }
        }
    }

    /** Tells what it comes to; whether that is a failure. */
    private static boolean fails(Case about, LimitView limit, AlwaysView view, Sink sink) {
        Formula formula = view.formula();
        if (formula.said() instanceof Gathering gathering && gathering.act() == Gathering.Act.EACH) {
            return each(about, limit, view, sink);
        }
        Value value = about.evaluator().value(formula, Field.ALL, Field.ALL);
        if (value instanceof Gap gap) {
            gap(about, limit, view.id(), view.book(), gap, sink);
        } else if (value == Answer.NO) {
            fails(about, limit, view, formula, Field.ALL, sink);
            return true;
        } else {
            view.relaxed().ifPresent(under -> relaxed(about, limit, view, under, sink));
        }
        return false;
    }

    /** Every one that does not have it is told of at its place. */
    private static boolean each(Case about, LimitView limit, AlwaysView view, Sink sink) {
        CaseField field = new CaseField(about);
        Formula body = view.formula().part();
        Gap gap = null;
        long steps = 0;
        boolean failed = false;
        int at = field.next(view.formula().of(), Field.ALL, 0);
        while (at >= 0 && gap != Gap.TOO_LONG) {
            Value value = about.evaluator().value(body, at, at);
            steps += about.evaluator().steps();
            if (value == Answer.NO) {
                fails(about, limit, view, body, at, sink);
                failed = true;
            }
            gap = steps > org.cantonment.rules.expression.Evaluator.MOST_STEPS ? Gap.TOO_LONG
                    : value instanceof Gap some && (gap == null || gap.unknown()) ? some : gap;
            at = field.next(view.formula().of(), Field.ALL, at + 1);
        }
        if (gap != null) {
            gap(about, limit, view.id(), view.book(), gap, sink);
        } else if (!failed) {
            view.relaxed().ifPresent(under -> relaxed(about, limit, view, under, sink));
        }
        return failed;
    }

    private static void fails(Case about, LimitView limit, AlwaysView view, Formula formula, int element, Sink sink) {
        Phrasing phrasing = new Phrasing(about.ruling()::title);
        Node node = element == Field.ALL ? null : about.muster().nodes().get(element);
        String where = node == null ? "" : "in " + Words.entry(node) + ' ';
        String message = BoundCheck.lead(limit, view.book()) + where
                + new Telling(about.evaluator(), phrasing, element).why(formula) + '.';
        List<Mend> mends = BoundCheck.own(limit);
        if (node == null) {
            mends.addAll(mends(about, formula));
        }
        Id at = node == null ? about.place() : node.entry().id();
        sink.add(limit.id(), node == null ? limit.id() : node.choice().id(), new Finding("always.fails",
                limit.severity(), at, Optional.of(view.id()), message, mends));
    }

    /** Where a plain count over the list is too small or too great, what would bring it where it belongs. */
    private static List<Mend> mends(Case about, Formula formula) {
        if (!(formula.said() instanceof Comparison comparison) || !(comparison.left() instanceof Quantity quantity)
                || quantity.measure() != Quantity.Measure.COUNT || quantity.in() != Quantity.Stretch.HERE) {
            return List.of();
        }
        Value there = about.evaluator().value(formula.part(), Field.ALL, Field.ALL);
        Value wanted = about.evaluator().value(formula.parts().get(1), Field.ALL, Field.ALL);
        if (!(there instanceof Amount some) || !(wanted instanceof Amount limit)) {
            return List.of();
        }
        Ratio lack = limit.ratio().minus(some.ratio());
        Selector of = formula.part().of();
        if (comparison.relation() == Relation.AT_LEAST || comparison.relation() == Relation.MORE) {
            Ratio more = comparison.relation() == Relation.MORE ? lack.down().plus(Ratio.ONE) : lack.up();
            return more.number() > 0 && more.number() <= MOST_ADDED
                    ? Mends.addSomewhere(about, of, (int) more.number()) : List.of();
        }
        Ratio less = comparison.relation() == Relation.LESS ? lack.negated().down().plus(Ratio.ONE) : lack.negated().up();
        return comparison.relation() == Relation.AT_MOST || comparison.relation() == Relation.LESS
                ? fewer(about, of, less.number()) : List.of();
    }

    private static final int MOST_ADDED = 100;

    private static List<Mend> fewer(Case about, Selector of, long less) {
        for (int i = about.muster().nodes().size() - 1; i >= 0; i--) {
            Node node = about.muster().nodes().get(i);
            if (org.cantonment.rules.muster.Muster.share(of, node) == node.copies() && node.copies() > 0
                    && node.copies() == node.count() && less > 0 && node.count() >= less) {
                return List.of(Mends.take(node, (int) less));
            }
        }
        return List.of();
    }

    private static void relaxed(Case about, LimitView limit, AlwaysView view, AlwaysView under, Sink sink) {
        if (about.evaluator().value(under.formula(), Field.ALL, Field.ALL) == Answer.NO) {
            Phrasing phrasing = new Phrasing(about.ruling()::title);
            sink.add(limit.id(), limit.id(), new Finding("limit.relaxed", Severity.NOTE, about.place(),
                    Optional.of(view.id()), limit.title() + ": relaxed by " + view.book() + " from what stands in "
                            + under.book() + " (" + phrasing.words(under.always().expression()) + ").", List.of()));
        }
    }

    /** A player's first list has none before it, which is nobody's fault; all else is told. */
    private static void gap(Case about, LimitView limit, Id line, String book, Gap gap, Sink sink) {
        if (gap == Gap.NO_LIST_BEFORE || gap == Gap.NOBODY) {
            return;
        }
        String message = limit.title() + " (" + book + ") was not judged: " + gap.words() + '.';
        sink.add(limit.id(), limit.id(), gap.unknown()
                ? new Finding("always.unknown", Severity.NOTE, about.place(), Optional.of(line), message, List.of())
                : new Finding("always.fault", Severity.CAUTION, about.place(), Optional.of(line), message,
                        List.of(Mend.advice("Let 'when' say in which lists the rule can be worked out."))));
    }
}
