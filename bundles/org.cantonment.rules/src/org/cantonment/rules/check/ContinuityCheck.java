package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
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
        for (LimitView limit : about.limits()) {
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
        Map<Id, Long> missing = Heritage.of(about, before).gone();
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
