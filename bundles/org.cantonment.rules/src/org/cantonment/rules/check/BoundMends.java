package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.rules.Measure;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.UnitView;

/** What would bring a list back within a bound, by points moved, the least first. */
final class BoundMends {

    private static final int MOST = 3;
    private static final int HUNDRED = 100;

    /** A mend and the points that it moves. */
    private record Moved(Mend mend, long points, int parent) {
    }

    private final Case about;
    private final BoundView view;
    private final Ground ground;
    private final Bounding bounding;

    BoundMends(Case about, BoundView view, Ground ground, Bounding bounding) {
        this.about = about;
        this.view = view;
        this.ground = ground;
        this.bounding = bounding;
    }

    /** Of entries in one place that are just alike, the last is the one to go. */
    List<Mend> lessened() {
        List<Moved> found = new ArrayList<>();
        for (Node node : ground.nodes()) {
            long share = ground.share(view.of(), node);
            long copies = node.count() == 0 ? 0 : ground.copies(node) / node.count();
            if (share > 0 && copies > 0) {
                long needed = needed(node, copies);
                if (needed > 0 && needed <= node.count() && leavesEnough(node, needed, copies)) {
                    found.add(new Moved(Mends.take(node, (int) needed), points(node) / node.count() * needed, node.parent()));
                }
            }
        }
        if (view.bound().measure() == Measure.PERCENT_OF_USED && view.bound().span().max() > 0) {
            more(found);
        }
        if (found.isEmpty() && view.bound().measure() == Measure.POINTS) {
            String exactly = view.bound().span().min() == view.bound().span().max() ? "exactly " : "at least ";
            return List.of(Mend.advice("Take out " + exactly + Words.points(bounding.wholeOver()) + " of "
                    + view.of().words() + '.'));
        }
        found.sort(Comparator.comparingLong(Moved::points));
        Map<String, Mend> unlike = new LinkedHashMap<>();
        found.forEach(moved -> unlike.put(moved.parent() + moved.mend().label(), moved.mend()));
        return unlike.values().stream().limit(MOST).toList();
    }

    private long points(Node node) {
        return node.formation() == null ? node.points() : about.muster().whole(node);
    }

    /** How many of an entry must go; 0 if that does not help. */
    private long needed(Node node, long copies) {
        if (view.bound().measure() == Measure.COUNT) {
            return (bounding.wholeOver() + copies - 1) / copies;
        }
        long each = ground.points(node) / node.count();
        if (node.formation() != null || each <= 0) {
            return 0;
        }
        long off = bounding.wholeOver();
        if (view.bound().measure() == Measure.PERCENT_OF_USED) {
            int left = HUNDRED - view.bound().span().max();
            if (left <= 0) {
                return 0;
            }
            long excess = bounding.value() * HUNDRED - bounding.base() * view.bound().span().max();
            off = (excess + left - 1) / left;
        }
        return (off + each - 1) / each;
    }

    /** Whether the bound's lower end holds when so many of an entry are gone. */
    private boolean leavesEnough(Node node, long gone, long copies) {
        Measure measure = view.bound().measure();
        long removed = gone * (measure == Measure.COUNT ? copies : ground.points(node) / node.count());
        long left = bounding.value() - removed;
        if (measure == Measure.PERCENT_OF_USED) {
            return left * HUNDRED >= (bounding.base() - removed) * view.bound().span().min();
        }
        return left * bounding.divisor() >= bounding.least();
    }

    /** A share of the points used also falls if something else is added, or something else is taken stronger. */
    private void more(List<Moved> found) {
        int percent = view.bound().span().max();
        long excess = bounding.value() * HUNDRED - bounding.base() * percent;
        long wanted = (excess + percent - 1) / percent;
        if (wanted > about.room() || ground.formation() != null) {
            return;
        }
        Moved best = null;
        for (Node node : ground.nodes()) {
            best = better(best, stronger(node, wanted));
        }
        for (Choice choice : about.ruling().choices()) {
            best = better(best, another(choice, wanted));
        }
        if (best != null) {
            found.add(best);
        }
        if (best == null || best.points() > wanted) {
            found.add(new Moved(Mend.advice("Add " + Words.points(wanted) + " or more that are not on "
                    + view.of().words() + '.'), wanted, -1));
        }
    }

    private static Moved better(Moved best, Moved other) {
        return best == null || other != null && other.points() < best.points() ? other : best;
    }

    private Moved stronger(Node node, long wanted) {
        if (node.unit() == null || node.step() == null || node.copies() != 1 || ground.share(view.of(), node) > 0) {
            return null;
        }
        long now = node.unit().points(node.strength());
        int strength = node.unit().strengthWorth(now + wanted);
        long more = strength < 0 ? Long.MAX_VALUE : node.unit().points(strength) - now;
        return more > about.room() ? null : new Moved(Mends.strength(node, strength), more, node.parent());
    }

    private Moved another(Choice choice, long wanted) {
        if (about.ruling().hasFormations() || !(choice instanceof UnitView unit) || view.of().takes(choice.index())
                || !about.mayTake(choice)) {
            return null;
        }
        int strength = unit.strengthWorth(wanted);
        long more = strength < 0 ? Long.MAX_VALUE : unit.points(strength);
        return more > about.room() ? null : new Moved(Mends.add(about, unit, strength), more, -1);
    }

    List<Mend> raised() {
        Selector of = view.of();
        if (view.bound().measure() == Measure.COUNT) {
            int wanted = (int) Math.min(Integer.MAX_VALUE, bounding.wholeUnder());
            if (ground.formation() == null) {
                return Mends.addSomewhere(about, of, wanted);
            }
            Choice choice = about.fills().cheapest(of);
            return choice == null ? List.of() : List.of(Mends.add(about, ground.place(), false, Optional.empty(), choice,
                    wanted));
        }
        return List.of(Mend.advice("Spend at least " + Words.points(bounding.wholeUnder()) + " more on " + of.words()
                + '.'));
    }
}
