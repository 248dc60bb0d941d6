package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Before;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.UnitView;

/** Order in growing: what stays of the list before, and what comes before what. */
public final class ContinuityCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (LimitView limit : about.ruling().limits()) {
            for (LimitLine line : limit.lines()) {
                if (line instanceof KeepView keep) {
                    about.situation().before().ifPresent(before -> keep(about, limit, keep, before, sink));
                } else if (line instanceof BeforeView before) {
                    before(about, limit, before, sink);
                }
            }
        }
    }

    private static void keep(Case about, LimitView limit, KeepView view, ForceList before, Sink sink) {
        Map<Id, Long> now = new HashMap<>();
        count(about.muster(), now);
        about.others().forEach(other -> count(other, now));
        Map<Id, Long> was = new TreeMap<>();
        count(before.body(), 1, about, was);
        before.contingents().forEach(contingent -> count(contingent.body(), 1, about, was));
        Map<Id, Long> missing = missing(about, was, now);
        long changes = missing.values().stream().mapToLong(Long::longValue).sum();
        if (changes <= view.keep().changes()) {
            return;
        }
        List<String> names = new ArrayList<>();
        List<Mend> mends = BoundCheck.own(limit);
        missing.forEach((id, count) -> {
            names.add(count + " " + about.ruling().title(id));
            if (about.ruling().choice(id) instanceof UnitView unit && about.mayTake(unit)
                    && !about.ruling().hasFormations()) {
                mends.add(new Mend("Keep " + unit.title() + '.', List.of(new AddUnit(about.place(), false,
                        Optional.empty(), id, OptionalInt.of(unit.leastStrength()), 1))));
            }
        });
        sink.add(limit.id(), limit.id(), new Finding("keep.too-many", limit.severity(), about.place(),
                Optional.of(view.id()), BoundCheck.lead(limit, view.book()) + "of the list before, at most "
                        + view.keep().changes() + " may be changed; " + changes + " are gone: " + Words.and(names) + '.',
                mends));
    }

    private static void count(Muster muster, Map<Id, Long> into) {
        for (Node node : muster.nodes()) {
            if (node.unit() != null) {
                into.merge(node.unit().id(), node.copies(), Long::sum);
            }
        }
    }

    private static void count(Body body, long copies, Case about, Map<Id, Long> into) {
        List<Entry> all = new ArrayList<>(body.entries());
        all.addAll(body.supports());
        for (Entry entry : all) {
            long here = Math.min(Muster.MOST, copies * Math.max(0, entry.count()));
            if (about.ruling().choice(entry.what()) instanceof UnitView) {
                into.merge(entry.what(), here, Long::sum);
            }
            count(entry.body(), here, about, into);
        }
    }

    /** What is gone; a unit whose successor came in its place is not. */
    private static Map<Id, Long> missing(Case about, Map<Id, Long> was, Map<Id, Long> now) {
        Map<Id, Long> spare = new HashMap<>(now);
        was.forEach((id, count) -> spare.merge(id, -count, Long::sum));
        Map<Id, Long> missing = new TreeMap<>();
        for (Id id : was.keySet()) {
            long gone = -spare.get(id);
            if (gone > 0 && about.ruling().choice(id) instanceof UnitView unit && unit.successor().isPresent()) {
                Id next = unit.successor().get().unit();
                long kept = Math.min(gone, Math.max(0, spare.getOrDefault(next, 0L)));
                spare.merge(next, -kept, Long::sum);
                gone -= kept;
            }
            if (gone > 0) {
                missing.put(id, gone);
            }
        }
        return missing;
    }

    private static void before(Case about, LimitView limit, BeforeView view, Sink sink) {
        Before line = view.before();
        long then = about.muster().count(view.then());
        long first = about.muster().count(view.first());
        if (then < line.thenCount() || first >= line.firstCount()) {
            return;
        }
        Node at = null;
        for (Node node : about.muster().nodes()) {
            at = at == null && Muster.share(view.then(), node) > 0 ? node : at;
        }
        List<Mend> mends = BoundCheck.own(limit);
        mends.addAll(Mends.addSomewhere(about, view.first(), (int) (line.firstCount() - first)));
        Id place = at == null ? about.place() : at.entry().id();
        sink.add(limit.id(), at == null ? limit.id() : at.choice().id(), new Finding("before.missing",
                limit.severity(), place, Optional.of(view.id()), BoundCheck.lead(limit, view.book())
                        + line.firstCount() + " of " + view.first().words() + " before " + line.thenCount() + " of "
                        + view.then().words() + "; the list has " + first + " and " + then + '.', mends));
    }
}
