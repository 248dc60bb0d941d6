package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.growth.Draft.Side;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.AlwaysView;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.Ruling;

/** Lists that go on from the list before: all of it, or all but a few, as far as it may still be taken. */
final class Continuity {

    private static final int EARLIER = 12;
    private static final int STARTS = 160;

    private final Brief brief;

    Continuity(Brief brief) {
        this.brief = brief;
    }

    /** Whether a list that does not go on from the one before may be refused for it, or be called unwise. */
    static boolean asked(Ruling ruling) {
        return must(ruling) || looksBack(ruling, Severity.CAUTION);
    }

    /** Whether such a list may be refused for it. */
    static boolean must(Ruling ruling) {
        return looksBack(ruling, Severity.BREACH);
    }

    private static boolean looksBack(Ruling ruling, Severity severity) {
        return ruling.limits().stream().filter(limit -> limit.severity() == severity)
                .flatMap(limit -> limit.lines().stream()).anyMatch(Continuity::looksBack);
    }

    private static boolean looksBack(LimitLine line) {
        return line instanceof KeepView || line instanceof AlwaysView always && looksBack(always.formula());
    }

    private static boolean looksBack(Formula formula) {
        return formula.said() instanceof Quantity some && (some.in() == Quantity.Stretch.LIST_BEFORE
                || some.measure().ordinal() >= Quantity.Measure.KEPT.ordinal())
                || formula.parts().stream().anyMatch(Continuity::looksBack);
    }

    private int changes() {
        return brief.ruling().limits().stream().flatMap(limit -> limit.lines().stream()).filter(KeepView.class::isInstance)
                .mapToInt(line -> ((KeepView) line).keep().changes()).min().orElse(2);
    }

    /** Drafts to begin with: earlier ones, and the same with one or two units fewer where the rules let them go. */
    List<Draft> starts(List<ForceList> earlier, CancelToken cancel) {
        Map<String, Draft> starts = new LinkedHashMap<>();
        List<Draft> level = new ArrayList<>();
        earlier.stream().limit(EARLIER).map(list -> Recast.of(list, brief.ruling(), cancel)).forEach(level::add);
        level.forEach(one -> starts.putIfAbsent(one.key(), one));
        for (int changed = 0; changed < Math.min(2, changes()); changed++) {
            List<Draft> fewer = new ArrayList<>();
            for (Draft one : level) {
                for (Draft less : less(one)) {
                    if (starts.size() < STARTS && starts.putIfAbsent(less.key(), less) == null) {
                        fewer.add(less);
                    }
                }
            }
            level = fewer;
        }
        return List.copyOf(starts.values());
    }

    private static List<Draft> less(Draft draft) {
        List<Draft> all = new ArrayList<>();
        for (int t = 0; t < draft.troops().size(); t++) {
            Troop troop = draft.troops().get(t);
            for (int b = 0; b < troop.fills().size(); b++) {
                Troop.Fill fill = troop.fills().get(b);
                for (int u = 0; u < fill.units().size(); u++) {
                    List<Taking> units = new ArrayList<>(fill.units());
                    units.remove(u);
                    List<Troop.Fill> fills = new ArrayList<>(troop.fills());
                    fills.set(b, fill.count() == 1 ? Troop.Fill.NONE : new Troop.Fill(fill.room(), fill.count() - 1, units));
                    List<Troop> troops = new ArrayList<>(draft.troops());
                    troops.set(t, new Troop(troop.of(), troop.parent(), fills));
                    all.add(new Draft(empty(troops, t) ? without(troops, t) : troops, draft.sides(), draft.load(), draft.have()));
                }
            }
        }
        for (int s = 0; s < draft.sides().size(); s++) {
            List<Side> sides = new ArrayList<>(draft.sides());
            sides.remove(s);
            all.add(new Draft(draft.troops(), sides, draft.load(), draft.have()));
        }
        return all;
    }

    private static boolean empty(List<Troop> troops, int t) {
        return troops.get(t).fills().stream().allMatch(fill -> fill.count() == 0);
    }

    /** The same without a formation, and without its place in the one that it stood in. */
    private static List<Troop> without(List<Troop> troops, int gone) {
        List<Troop> left = new ArrayList<>();
        for (int t = 0; t < troops.size(); t++) {
            Troop troop = troops.get(t);
            List<Troop.Fill> fills = new ArrayList<>(troop.fills());
            if (t == troops.get(gone).parent()) {
                int billet = place(troop, troops.get(gone));
                Troop.Fill fill = fills.get(billet);
                fills.set(billet, fill.count() == 1 ? Troop.Fill.NONE : new Troop.Fill(fill.room(), fill.count() - 1, fill.units()));
            }
            if (t != gone) {
                left.add(new Troop(troop.of(), troop.parent() > gone ? troop.parent() - 1 : troop.parent(), fills));
            }
        }
        return left;
    }

    private static int place(Troop parent, Troop child) {
        for (int b = 0; b < parent.fills().size(); b++) {
            Troop.Fill fill = parent.fills().get(b);
            if (fill.count() > fill.units().size()
                    && parent.of().billets().get(b).rooms().get(fill.room()).of().takes(child.of().index())) {
                return b;
            }
        }
        throw new IllegalStateException(child.of().title() + " stands nowhere in " + parent.of().title());
    }
}
