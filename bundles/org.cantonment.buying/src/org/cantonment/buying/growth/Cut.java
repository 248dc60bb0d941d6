package org.cantonment.buying.growth;

import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.Scope;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.TakingView;

/**
 * A line of a limit as something that can be counted while a list is drafted. It counts two things and says from them
 * whether the line holds. What it says is never more than a guide: the judge has the last word.
 */
final class Cut {

    private static final int HUNDRED = 100;

    /** From the two counts and the points of all: by how much the line is not kept; 0 if it is. */
    private interface Lack {
        long of(long one, long other, long points);
    }

    private final LimitLine line;
    private final Selector one;
    private final Selector other;
    private final boolean points;
    private final long most;
    private final Lack lack;
    private final boolean advice;

    private Cut(LimitLine line, Selector one, Selector other, boolean points, long most, Lack lack) {
        this(line, one, other, points, most, lack, false);
    }

    private Cut(LimitLine line, Selector one, Selector other, boolean points, long most, Lack lack, boolean advice) {
        this.line = line;
        this.one = one;
        this.other = other;
        this.points = points;
        this.most = most;
        this.lack = lack;
        this.advice = advice;
    }

    /** The same as advice: a list that does not keep it is legal all the same. */
    Cut advice() {
        return new Cut(line, one, other, points, most, lack, true);
    }

    /** A line as a cut; empty if it asks for something that cannot be counted here. */
    static Optional<Cut> of(LimitLine line, Brief brief) {
        if (line instanceof BoundView bound && whole(bound.bound().scope())) {
            return bound(bound, brief);
        }
        if (line instanceof TakingView taking && (whole(taking.taking().scope()) || taking.taking().relation() == Relation.JOINS)) {
            return taking(taking);
        }
        if (line instanceof BeforeView before) {
            return Optional.of(new Cut(line, before.first(), before.then(), false, Long.MAX_VALUE, (first, then, points) ->
                    then < before.before().thenCount() ? 0 : Math.max(0, before.before().firstCount() - first)));
        }
        return Optional.empty();
    }

    private static boolean whole(Scope scope) {
        return scope.reckoning() != Reckoning.EACH_FORMATION && scope.reckoning() != Reckoning.EACH_OF;
    }

    private static Optional<Cut> bound(BoundView view, Brief brief) {
        boolean counted = view.bound().measure() == Measure.COUNT;
        if (!counted && (view.of().hasFormations() || view.of().hasSupports())) {
            return Optional.empty();
        }
        Span span = view.bound().span();
        if (counted || view.bound().measure() == Measure.POINTS) {
            long used = view.bound().scope().reckoning() == Reckoning.CAMPAIGN ? used(view.of(), brief) : 0;
            int size = Math.max(1, view.bound().perCount());
            boolean up = view.bound().rounding() == Rounding.UP;
            long most = view.per().empty() && span.bounded() ? span.max() - used : Long.MAX_VALUE;
            return Optional.of(new Cut(view, view.of(), view.per(), !counted, most, (there, per, points) -> {
                long groups = view.per().empty() ? 1 : (per + (up ? size - 1 : 0)) / size;
                return beyond(there + used, span.min() * groups, span.bounded() ? span.max() * groups : Long.MAX_VALUE);
            }));
        }
        boolean ofLimit = view.bound().measure() == Measure.PERCENT_OF_LIMIT;
        long limit = brief.situation().points().orElse(0);
        long most = ofLimit && span.bounded() ? limit * span.max() / HUNDRED : Long.MAX_VALUE;
        return Optional.of(new Cut(view, view.of(), view.per(), true, most, (there, per, points) -> {
            long base = ofLimit ? limit : points;
            return (beyond(there * HUNDRED, base * span.min(), span.bounded() ? base * span.max() : Long.MAX_VALUE)
                    + HUNDRED - 1) / HUNDRED;
        }));
    }

    private static long used(Selector of, Brief brief) {
        long used = 0;
        for (Map.Entry<Id, Integer> one : brief.situation().used().entrySet()) {
            Choice choice = brief.ruling().choice(one.getKey());
            used += choice != null && of.takes(choice.index()) ? one.getValue() : 0;
        }
        return used;
    }

    private static long beyond(long there, long least, long most) {
        return Math.max(0, Math.max(least - there, there - most));
    }

    private static Optional<Cut> taking(TakingView view) {
        Span span = view.taking().span().orElse(Span.atLeast(1));
        if (view.taking().relation() == Relation.JOINS) {
            // Joined in each formation they are there in the whole list, too.
            int least = Math.max(1, span.min());
            return Optional.of(new Cut(view, view.subjects(), view.beside(), false, Long.MAX_VALUE, (takes, there, points) ->
                    takes == 0 ? 0 : Math.max(0, least - takes) + Math.max(0, least - there)));
        }
        if (view.taking().relation() == Relation.NEEDS) {
            return Optional.of(new Cut(view, view.subjects(), view.beside(), false, Long.MAX_VALUE, (takes, there, points) ->
                    takes == 0 || span.holds(there) ? 0 : Math.max(1, span.min() - there)));
        }
        if (view.taking().relation() == Relation.EXCLUDES) {
            return Optional.of(new Cut(view, view.subjects(), view.beside(), false, Long.MAX_VALUE, (takes, there, points) ->
                    takes == 0 || there == 0 || !span.holds(there) ? 0 : 1));
        }
        return Optional.empty();
    }

    /** Counts one more, at its place in the sums, which has room for two. */
    void add(Choice choice, long worth, int support, long[] sums, int at) {
        if (one.takes(choice.index()) || one.takesSupport(support)) {
            sums[at] += points ? worth : 1;
        }
        if (!other.empty() && (other.takes(choice.index()) || other.takesSupport(support))) {
            sums[at + 1]++;
        }
    }

    /** Whether a list is refused for it. */
    boolean binding() {
        return !advice;
    }

    /** Whether a list is refused for it whatever is added. */
    boolean broken(long[] sums, int at) {
        return !advice && sums[at] > most;
    }

    /** By how much it is not kept; 0 if it is. */
    long lacks(long[] sums, int at, long all) {
        return lack.of(sums[at], sums[at + 1], all);
    }
}
