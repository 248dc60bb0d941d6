package org.cantonment.rules.change;

import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
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
        long deficit = Math.max(1, deficit(view, above));
        return Need.of(deficit, needs.open(), edit -> effect(edit, view, above, deficit));
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
        long sign = above ? -1 : 1;
        boolean per = !view.per().empty() && (above ? limits.more(edit, view.per()) : limits.fewer(edit, view.per()));
        boolean hosts = !above && limits.hosts(edit, view.of());
        return per || hosts ? Long.MAX_VALUE : sign * limits.count(edit, view.of());
    }

    private long effect(Edit edit, BoundView view, boolean above, long deficit) {
        Bound bound = view.bound();
        if (bound.measure() == Measure.COUNT) {
            return helpful(edit, view, above);
        }
        if (bound.measure() == Measure.POINTS) {
            long per = view.per().empty() ? 0 : helpful(edit, view, above);
            boolean hosts = !above && limits.hosts(edit, view.of());
            return per == Long.MAX_VALUE || hosts ? deficit : points(edit, view.of(), above);
        }
        if (edit.kind() == Kind.ADD_FORMATION && (!above || bound.measure() == Measure.PERCENT_OF_USED)) {
            return deficit;
        }
        if (bound.measure() == Measure.PERCENT_OF_LIMIT) {
            return HUNDRED * points(edit, view.of(), above);
        }
        return share(edit, view.of(), above, above ? bound.span().max() : bound.span().min());
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
        Body body = needs.draft().list().body();
        for (Contingent some : needs.draft().list().contingents()) {
            body = some.id().equals(part.id()) ? some.body() : body;
        }
        Muster muster = Muster.of(part.now(), part.id(), body);
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
