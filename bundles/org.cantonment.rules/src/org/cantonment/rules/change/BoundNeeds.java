package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Selector;

/** What bounds ask for: fewer or more of something, fewer or more points on it, or a share that falls or rises. */
final class BoundNeeds {

    private static final int HUNDRED = 100;

    private final Needs needs;
    private final Part part;
    private final LimitNeeds limits;

    BoundNeeds(Needs needs, Part part, LimitNeeds limits) {
        this.needs = needs;
        this.part = part;
        this.limits = limits;
    }

    /** @param above whether there is too much, and not too little */
    Need of(BoundView view, boolean above) {
        Bound bound = view.bound();
        Reckoning reckoning = bound.scope().reckoning();
        boolean each = reckoning == Reckoning.EACH_FORMATION || reckoning == Reckoning.EACH_OF;
        boolean deep = bound.measure() != Measure.COUNT && view.of().hasFormations();
        if (each || deep || needs.blurred() || reckoning == Reckoning.CAMPAIGN) {
            return Need.of(1, needs.open(), edit -> rough(edit, view, above, each, deep) ? 1 : 0);
        }
        return Need.of(Math.max(1, deficit(view, above)), needs.open(), edit -> effect(edit, view, above));
    }

    /** The same for a bound that is kept, as far as it may be reckoned with: by how much it may not be worsened. */
    void kept(BoundView view, List<Need> into) {
        Bound bound = view.bound();
        Reckoning reckoning = bound.scope().reckoning();
        boolean deep = bound.measure() != Measure.COUNT && view.of().hasFormations();
        if (needs.blurred() || deep || !view.per().empty() || view.of().hasSupports()
                || reckoning == Reckoning.EACH_FORMATION || reckoning == Reckoning.EACH_OF || reckoning == Reckoning.CAMPAIGN
                || bound.measure() == Measure.PERCENT_OF_LIMIT && needs.board().situation().points().isEmpty()) {
            return;
        }
        if (bound.span().bounded()) {
            kept(view, true, into);
        }
        if (bound.span().min() > 0) {
            kept(view, false, into);
        }
    }

    private void kept(BoundView view, boolean above, List<Need> into) {
        long deficit = deficit(view, above);
        if (deficit <= 0) {
            into.add(Need.of(deficit, needs.open(), edit -> effect(edit, view, above)));
        }
    }

    /** Whether an edit might help at all, wherever it is. */
    private boolean rough(Edit edit, BoundView view, boolean above, boolean each, boolean deep) {
        if (each && edit.kind() == Kind.REMOVE && edit.group().formation() || deep && !edit.deltas().isEmpty()) {
            return true;
        }
        if (view.bound().measure() == Measure.COUNT) {
            return helpful(edit, view, above) > 0;
        }
        if (!view.per().empty() && helpful(edit, view, above) > 0 || edit.kind() == Kind.ADD_FORMATION) {
            return true;
        }
        return edit.deltas().stream().anyMatch(delta -> delta.least() != 0 || delta.most() != 0);
    }

    /** How much an edit changes the count or its base for the better. */
    private long helpful(Edit edit, BoundView view, boolean above) {
        if (!view.per().empty() && (above ? limits.more(edit, view.per()) : limits.fewer(edit, view.per()))) {
            return Need.PLENTY;
        }
        return above ? -limits.count(edit, view.of())
                : limits.count(edit, view.of()) + limits.hosted(edit, view.of(), true);
    }

    private long effect(Edit edit, BoundView view, boolean above) {
        Bound bound = view.bound();
        if (bound.measure() == Measure.COUNT) {
            return helpful(edit, view, above);
        }
        long inside = above ? 0 : limits.hostedPoints(edit, view.of(), true);
        if (bound.measure() == Measure.POINTS) {
            boolean per = !view.per().empty() && helpful(edit, view, above) == Need.PLENTY;
            return per ? Need.PLENTY : inside + points(edit, view.of(), above);
        }
        if (bound.measure() == Measure.PERCENT_OF_LIMIT) {
            return HUNDRED * (inside + points(edit, view.of(), above));
        }
        int percent = above ? bound.span().max() : bound.span().min();
        long others = above ? limits.hostedPoints(edit, view.of(), false) * percent : inside * (HUNDRED - percent);
        return others + share(edit, view.of(), above, percent);
    }

    /** By how many points an edit lowers or raises what is spent on those meant, at the most. */
    private long points(Edit edit, Selector of, boolean above) {
        long points = 0;
        for (Delta delta : edit.deltas()) {
            if (limits.meant(delta, of)) {
                points += above ? -delta.least() : delta.most();
            }
        }
        return points;
    }

    /** By how much an edit brings a share of all points used nearer, at the most, in hundredths of points. */
    private long share(Edit edit, Selector of, boolean above, long percent) {
        long effect = 0;
        for (Delta delta : edit.deltas()) {
            long worth = (percent - (limits.meant(delta, of) ? HUNDRED : 0)) * (above ? 1 : -1);
            effect += Math.max(worth * delta.least(), worth * delta.most());
        }
        return effect;
    }

    private long deficit(BoundView view, boolean above) {
        Muster muster = needs.muster(part);
        Bound bound = view.bound();
        long span = above ? bound.span().max() : bound.span().min();
        long sign = above ? 1 : -1;
        if (bound.measure() == Measure.COUNT || bound.measure() == Measure.POINTS) {
            long value = bound.measure() == Measure.COUNT ? muster.count(view.of()) : muster.points(view.of());
            return sign * (value - span * groups(bound, view, muster));
        }
        long base = bound.measure() == Measure.PERCENT_OF_LIMIT
                ? needs.board().situation().points().orElse(0) : muster.tally().points();
        Rounding lenient = above ? Rounding.UP : Rounding.DOWN;
        return sign * (HUNDRED * muster.points(view.of()) - span * Math.max(0, base))
                - (bound.rounding() == lenient ? HUNDRED - 1 : 0);
    }

    private static long groups(Bound bound, BoundView view, Muster muster) {
        if (view.per().empty()) {
            return 1;
        }
        int size = Math.max(1, bound.perCount());
        long there = muster.count(view.per());
        return bound.rounding() == Rounding.UP ? (there + size - 1) / size : there / size;
    }
}
