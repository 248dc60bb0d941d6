package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.UnitView;

/**
 * A list held against the one before it, unit by unit. A unit whose successor came in its place is kept.
 *
 * @param was how many there were
 * @param gone how many of those are missing, where any is
 * @param added how many there are beyond what was kept, where there are any
 */
record Heritage(Map<Id, Long> was, Map<Id, Long> gone, Map<Id, Long> added) {

    static Heritage of(Case about, ForceList before) {
        Map<Id, Long> spare = new TreeMap<>();
        count(about.muster(), spare);
        about.others().forEach(other -> count(other, spare));
        Map<Id, Long> was = new TreeMap<>();
        count(before.body(), 1, about, was);
        before.contingents().forEach(contingent -> count(contingent.body(), 1, about, was));
        was.forEach((id, count) -> spare.merge(id, -count, Long::sum));
        Map<Id, Long> gone = new TreeMap<>();
        for (Id id : was.keySet()) {
            long missing = -spare.get(id);
            if (missing > 0 && about.ruling().choice(id) instanceof UnitView unit && unit.successor().isPresent()) {
                Id next = unit.successor().get().unit();
                long kept = Math.min(missing, Math.max(0, spare.getOrDefault(next, 0L)));
                spare.merge(next, -kept, Long::sum);
                missing -= kept;
            }
            if (missing > 0) {
                gone.put(id, missing);
            }
        }
        Map<Id, Long> added = new HashMap<>(spare);
        added.values().removeIf(count -> count <= 0);
        return new Heritage(was, gone, added);
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
}
