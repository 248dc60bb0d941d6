package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;

/** At most, at least, exactly, so many for each so many, and shares of points. */
public final class BoundCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (LimitView limit : about.limits()) {
            for (LimitLine line : limit.lines()) {
                if (line instanceof BoundView bound) {
                    about.situation().cancel().check();
                    check(about, limit, bound, sink);
                }
            }
        }
    }

    private static void check(Case about, LimitView limit, BoundView view, Sink sink) {
        if (view.bound().measure() == Measure.PERCENT_OF_LIMIT && about.points().isEmpty()) {
            sink.add(limit.id(), limit.id(), new Finding("limit.no-base", Severity.NOTE, about.place(),
                    Optional.of(view.id()), limit.title() + " asks for a share of the limit, and no limit of points is "
                            + "known; it was not checked.", List.of()));
            return;
        }
        long points = about.points().orElse(0);
        Ground.each(about, view.bound().scope(), ground -> {
            Bounding bounding = Bounding.of(view, ground, points);
            if (bounding.above()) {
                above(about, limit, view, ground, bounding, sink);
            } else if (bounding.below()) {
                below(about, limit, view, ground, bounding, sink);
            } else {
                view.relaxed().ifPresent(under -> relaxed(about, limit, view, under, ground, points, sink));
            }
        });
    }

    private static void above(Case about, LimitView limit, BoundView view, Ground ground, Bounding bounding,
            Sink sink) {
        Node last = turning(view, ground, bounding);
        String message = lead(limit, view.book()) + rule(view, bounding) + "; " + ground.has() + ' ' + bounding.value() + unit(view)
                + ", " + Words.fraction(bounding.over(), bounding.divisor()) + " too many.";
        Id at = last == null ? ground.place() : last.entry().id();
        Id subject = last == null ? limit.id() : last.choice().id();
        sink.add(limit.id(), subject, new Finding("limit.at-most", limit.severity(), at, Optional.of(view.id()), message,
                sink.mends(() -> mends(limit, new BoundMends(about, view, ground, bounding).lessened()))));
    }

    /** The entry with which the bound is passed. */
    private static Node turning(BoundView view, Ground ground, Bounding bounding) {
        long sum = 0;
        Node last = null;
        for (Node node : ground.nodes()) {
            long share = ground.share(view.of(), node);
            if (share <= 0) {
                continue;
            }
            last = node;
            sum += view.bound().measure() == Measure.COUNT ? share : ground.points(node);
            if (sum * bounding.divisor() > bounding.most()) {
                return node;
            }
        }
        return last;
    }

    private static void below(Case about, LimitView limit, BoundView view, Ground ground, Bounding bounding,
            Sink sink) {
        String message = lead(limit, view.book()) + rule(view, bounding) + "; " + ground.has() + ' '
                + (bounding.value() == 0 ? "none" : bounding.value() + unit(view)) + ", "
                + Words.fraction(bounding.under(), bounding.divisor()) + " too few.";
        Id subject = ground.formation() == null ? limit.id() : ground.formation().choice().id();
        sink.add(limit.id(), subject, new Finding("limit.at-least", limit.severity(), ground.place(),
                Optional.of(view.id()), message,
                sink.mends(() -> mends(limit, new BoundMends(about, view, ground, bounding).raised()))));
    }

    private static void relaxed(Case about, LimitView limit, BoundView view, BoundView under, Ground ground,
            long points, Sink sink) {
        Bounding stricter = Bounding.of(under, ground, points);
        if (stricter.above() || stricter.below()) {
            Node last = stricter.above() ? turning(under, ground, stricter) : null;
            sink.add(limit.id(), limit.id(), new Finding("limit.relaxed", Severity.NOTE,
                    last == null ? ground.place() : last.entry().id(), Optional.of(view.id()),
                    limit.title() + ": relaxed by " + view.book() + " from what stands in " + under.book() + " ("
                            + rule(under, stricter) + "); " + ground.has() + ' ' + stricter.value() + unit(under) + '.',
                    List.of()));
        }
    }

    static String lead(LimitView limit, String book) {
        return limit.says().map(words -> words.endsWith(".") ? words + ' ' : words + ". ").orElse("") + limit.title()
                + " (" + book + "): ";
    }

    private static List<Mend> mends(LimitView limit, List<Mend> more) {
        List<Mend> mends = own(limit);
        mends.addAll(more);
        return mends;
    }

    static List<Mend> own(LimitView limit) {
        List<Mend> mends = new ArrayList<>();
        limit.mend().ifPresent(words -> mends.add(Mend.advice(words)));
        return mends;
    }

    /** "at most 40 percent of points used on Armour, that is 56 of 140". */
    private static String rule(BoundView view, Bounding bounding) {
        Bound bound = view.bound();
        Span span = bound.span();
        String words = span.min() == span.max() ? "exactly " + span : span.toString();
        String of = view.of().words();
        if (bound.measure() == Measure.COUNT || bound.measure() == Measure.POINTS) {
            String what = bound.measure() == Measure.COUNT ? " of " + of : " points on " + of;
            String per = view.per().empty() ? "" : " for " + (bound.perCount() == 1 ? "each "
                    : "every " + bound.perCount() + " of ") + view.per().words() + ", here " + bounding.groups() + " times";
            return words + what + per;
        }
        String base = bound.measure() == Measure.PERCENT_OF_LIMIT ? " percent of the limit on "
                : " percent of points used on ";
        return words + base + of + ", that is " + allowance(bound, bounding) + " of " + bounding.base();
    }

    private static String allowance(Bound bound, Bounding bounding) {
        String rounded = bound.rounding() == Rounding.EXACT ? ""
                : bound.rounding() == Rounding.UP ? " rounded up" : " rounded down";
        if (!bound.span().bounded()) {
            return Words.fraction(bounding.least(), bounding.divisor()) + rounded;
        }
        String most = Words.fraction(bounding.most(), bounding.divisor());
        return (bound.span().min() == 0 || bound.span().min() == bound.span().max() ? most
                : Words.fraction(bounding.least(), bounding.divisor()) + " to " + most) + rounded;
    }

    private static String unit(BoundView view) {
        return view.bound().measure() == Measure.COUNT ? "" : " points";
    }
}
