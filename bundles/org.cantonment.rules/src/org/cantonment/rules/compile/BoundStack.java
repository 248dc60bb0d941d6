package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Direction;
import org.cantonment.rules.view.BoundView;

/**
 * The bounds of one limit as the layers leave them. A change or a tightening puts a stricter line in the place of a
 * lower one; only loosen may put a looser one there. Where books collide without saying, the strictest stands.
 */
final class BoundStack {

    /** A bound that stands, and the one it relaxed. */
    private record Standing(Said<Bound> said, Optional<Standing> relaxed) {
    }

    private final BookOrder order;
    private final Picker picker;
    private final Names names;
    private final List<Finding> findings;

    BoundStack(BookOrder order, Picker picker, Names names, List<Finding> findings) {
        this.order = order;
        this.picker = picker;
        this.names = names;
        this.findings = findings;
    }

    List<BoundView> of(Card card) {
        List<Said<Bound>> own = new ArrayList<>();
        List<Said<Bound>> changes = new ArrayList<>();
        for (Said<Bound> said : card.holding(Bound.class)) {
            (said.own() ? own : changes).add(said);
        }
        List<BoundView> views = new ArrayList<>();
        for (Standing standing : stack(own, closest(changes), true)) {
            views.add(view(standing));
        }
        return views;
    }

    private List<Said<Bound>> closest(List<Said<Bound>> changes) {
        List<Said<Bound>> kept = new ArrayList<>();
        for (Said<Bound> said : changes) {
            boolean closer = changes.stream().anyMatch(other -> other.book() == said.book()
                    && other.closeness() > said.closeness() && BoundKey.of(other.fact()).equals(BoundKey.of(said.fact())));
            if (!closer) {
                kept.add(said);
            }
        }
        return kept;
    }

    private List<Standing> stack(List<Said<Bound>> own, List<Said<Bound>> changes, boolean report) {
        List<Standing> standing = new ArrayList<>();
        for (Said<Bound> said : picker.each(own, BoundKey::of)) {
            standing.add(new Standing(said, Optional.empty()));
        }
        for (Said<Bound> said : picker.inTurn(changes)) {
            if (report) {
                checkDirection(own, changes, said);
            }
            lay(said, standing, report);
        }
        return standing;
    }

    /** A line must do what it says to what the books below its own say. */
    private void checkDirection(List<Said<Bound>> own, List<Said<Bound>> changes, Said<Bound> said) {
        List<Said<Bound>> below = changes.stream().filter(other -> order.over(said.book(), other.book())).toList();
        for (Standing lower : stack(own, below, false)) {
            Strictness strictness = lower.said().book() != said.book() && meets(lower.said().fact(), said.fact())
                    ? Strictness.of(lower.said().fact(), said.fact()) : Strictness.SAME;
            if (Picker.wrongWay(said.direction(), strictness)) {
                findings.add(picker.direction(said, lower.said().fact().id(), lower.said().book()));
            } else if (said.direction() == Direction.CHANGE && relaxes(strictness)) {
                findings.add(picker.unsaid(said.fact().id(), said.book(), lower.said().fact().id(),
                        lower.said().book()));
            }
        }
    }

    private void lay(Said<Bound> said, List<Standing> standing, boolean report) {
        List<Standing> gone = new ArrayList<>();
        Standing relaxed = null;
        for (Standing lower : standing) {
            if (!meets(lower.said().fact(), said.fact())) {
                continue;
            }
            Strictness strictness = Strictness.of(lower.said().fact(), said.fact());
            if (said.direction() == Direction.LOOSEN) {
                gone.add(lower);
                relaxed = strictness == Strictness.LOOSER || strictness == Strictness.OTHER ? lower : relaxed;
            } else if (sameMeasure(lower.said().fact(), said.fact())) {
                if (relaxes(strictness)) {
                    reportCollision(said, lower, report);
                    return;
                }
                gone.add(lower);
            }
        }
        standing.removeAll(gone);
        if (said.direction() != Direction.LOOSEN || !gone.isEmpty()) {
            standing.add(new Standing(said, Optional.ofNullable(relaxed)));
        }
    }

    private void reportCollision(Said<Bound> said, Standing lower, boolean report) {
        if (report && !order.over(said.book(), lower.said().book())
                && said.direction() == Direction.CHANGE && order.layer(lower.said().book())) {
            findings.add(picker.collision(said.fact().id(), said.book(), lower.said().fact().id(),
                    lower.said().book()));
        }
    }

    private static boolean relaxes(Strictness strictness) {
        return strictness == Strictness.LOOSER || strictness == Strictness.OTHER;
    }

    private static boolean sameMeasure(Bound a, Bound b) {
        return a.measure() == b.measure() && a.perCount() == b.perCount();
    }

    /** Whether the two bind the same things in the same place from the same end. */
    private static boolean meets(Bound lower, Bound upper) {
        return new HashSet<>(lower.of()).equals(new HashSet<>(upper.of())) && lower.scope().equals(upper.scope())
                && new HashSet<>(lower.per()).equals(new HashSet<>(upper.per()))
                && (lower.span().bounded() && upper.span().bounded()
                        || lower.span().min() > 0 && upper.span().min() > 0);
    }

    private BoundView view(Standing standing) {
        Bound bound = standing.said().fact();
        return new BoundView(bound, order.title(standing.said().book()), names.selector(bound.of()),
                names.selector(bound.per()), standing.relaxed().map(this::view));
    }
}
