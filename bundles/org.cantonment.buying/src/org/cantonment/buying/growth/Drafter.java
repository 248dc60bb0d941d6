package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.growth.Draft.Taking;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.SupportView;
import org.cantonment.rules.view.UnitView;

/**
 * Drafts lists: billet by billet, each filled in many ways, with as many drafts kept as can be looked at. Half of what is
 * kept uses the most points, half the fewest, so that small lists and great ones come out.
 */
final class Drafter {

    private static final int KEPT = 160;
    private static final int FILLS = 60;
    private static final int BEYOND_LEAST = 2;
    private static final int UNITS = 8;

    private final Brief brief;
    private final long limit;
    private final CancelToken cancel;
    private final Set<Id> liked = new TreeSet<>();
    private final Set<Id> never = new TreeSet<>();
    private final Set<Id> first = new TreeSet<>();

    Drafter(Brief brief, CancelToken cancel) {
        this.brief = brief;
        this.cancel = cancel;
        limit = brief.situation().points().orElseThrow();
        brief.wishes().stream().flatMap(wish -> wish.tastes().stream()).forEach(taste ->
                (taste.taste() == Taste.NEVER ? never : taste.taste() == Taste.FIRST ? first : liked).addAll(taste.what()));
    }

    /** Drafts of one formation and its supports, of each formation in turn; only of those wished for first, if any is. */
    List<Draft> drafts() {
        List<List<Draft>> byFormation = new ArrayList<>();
        List<FormationView> formations = new ArrayList<>();
        for (Choice choice : brief.ruling().choices()) {
            if (choice instanceof FormationView formation && may(formation)) {
                formations.add(formation);
            }
        }
        boolean wished = formations.stream().anyMatch(one -> named(one, first));
        for (FormationView formation : formations) {
            if (!wished || named(formation, first)) {
                byFormation.add(inTurn(drafts(formation)));
            }
        }
        List<Draft> all = new ArrayList<>();
        for (int i = 0; i < KEPT; i++) {
            for (List<Draft> drafts : byFormation) {
                if (i < drafts.size()) {
                    all.add(drafts.get(i));
                }
            }
        }
        return all;
    }

    /** The first, the last, the second, the last but one, and so on: great lists and small ones in turn. */
    private static List<Draft> inTurn(List<Draft> drafts) {
        List<Draft> turned = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            turned.add(drafts.get(i % 2 == 0 ? i / 2 : drafts.size() - 1 - i / 2));
        }
        return turned;
    }

    private boolean may(Choice choice) {
        return choice.permission().allowed() && !named(choice, never) && (choice.sides().isEmpty()
                || brief.situation().side().isEmpty() || choice.sides().contains(brief.situation().side().get()));
    }

    private static boolean named(Choice choice, Set<Id> names) {
        return names.contains(choice.id()) || choice.kinds().stream().anyMatch(names::contains);
    }

    private List<Draft> drafts(FormationView formation) {
        List<Draft> drafts = List.of(Draft.of(formation));
        for (BilletView billet : formation.billets()) {
            List<List<Taking>> fills = new ArrayList<>();
            billet.rooms().forEach(room -> fills.addAll(fills(room.of(), room.span().min(), room.span().max())));
            drafts = grown(drafts, fills, false);
        }
        for (SupportView support : brief.ruling().supports()) {
            if (support.permission().allowed() && support.rooms().size() == 1) {
                Room room = support.rooms().get(0);
                drafts = grown(drafts, fills(room.of(), room.span().min(), Math.min(room.span().max(), 1)), true);
            }
        }
        return drafts;
    }

    private List<Draft> grown(List<Draft> drafts, List<List<Taking>> fills, boolean support) {
        Map<String, Draft> grown = new LinkedHashMap<>();
        for (Draft draft : drafts) {
            cancel.check();
            for (List<Taking> fill : fills) {
                int likes = (int) fill.stream().filter(one -> named(one.unit(), liked)).count();
                Draft more = draft.with(fill, support, likes);
                if (more.points() <= limit) {
                    grown.putIfAbsent(more.key(), more);
                }
            }
        }
        Comparator<Draft> byLiking = Comparator.comparingInt(draft -> -draft.liked());
        List<Draft> rich = new ArrayList<>(grown.values());
        rich.sort(byLiking.thenComparing(draft -> -draft.points()).thenComparing(Draft::key));
        List<Draft> kept = new ArrayList<>(rich.subList(0, Math.min(KEPT / 2, rich.size())));
        Set<String> have = new HashSet<>();
        kept.forEach(draft -> have.add(draft.key()));
        rich.sort(Comparator.comparingLong(Draft::points).thenComparing(Draft::key));
        rich.stream().filter(draft -> !have.contains(draft.key())).limit(KEPT / 2).forEach(kept::add);
        return kept;
    }

    /** Ways to fill a place with a number of units between these bounds, fewest first. */
    private List<List<Taking>> fills(Selector of, int least, int most) {
        List<Taking> takings = takings(of);
        List<List<Taking>> fills = new ArrayList<>();
        for (int size = least; size <= Math.min(most, least + BEYOND_LEAST); size++) {
            List<List<Taking>> some = new ArrayList<>();
            combine(takings, 0, size, new ArrayList<>(), some);
            fills.addAll(some);
        }
        return fills;
    }

    private static void combine(List<Taking> takings, int from, int size, List<Taking> taken, List<List<Taking>> into) {
        if (into.size() >= FILLS) {
            return;
        }
        if (taken.size() == size) {
            into.add(List.copyOf(taken));
            return;
        }
        for (int i = from; i < takings.size(); i++) {
            taken.add(takings.get(i));
            combine(takings, i, size, taken, into);
            taken.remove(taken.size() - 1);
        }
    }

    /** Units that may stand there, at the least and the greatest strength of each step, liked ones first, then cheap ones. */
    private List<Taking> takings(Selector of) {
        List<UnitView> units = new ArrayList<>();
        for (UnitView unit : brief.ruling().units()) {
            if (of.takes(unit.index()) && may(unit) && unit.priced()) {
                units.add(unit);
            }
        }
        units.sort(Comparator.comparing((UnitView unit) -> !named(unit, liked)).thenComparing(UnitView::leastPoints)
                .thenComparing(UnitView::index));
        List<Taking> takings = new ArrayList<>();
        for (UnitView unit : units.subList(0, Math.min(UNITS, units.size()))) {
            Set<Integer> strengths = new TreeSet<>();
            for (Step step : unit.steps()) {
                strengths.add(step.from());
                strengths.add(step.to());
            }
            strengths.stream().filter(strength -> unit.step(strength) != null && unit.points(strength) <= limit)
                    .forEach(strength -> takings.add(new Taking(unit, strength)));
        }
        return takings;
    }
}
