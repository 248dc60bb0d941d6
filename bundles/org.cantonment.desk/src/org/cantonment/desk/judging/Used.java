package org.cantonment.desk.judging;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;

/** How many of each unit and formation some lists have together. */
public final class Used {
    private final Map<Id, Integer> counts = new HashMap<>();

    private Used() {
    }

    /** By the ids of what stands in them. */
    public static Map<Id, Integer> in(List<ForceList> lists) {
        Used used = new Used();
        for (ForceList list : lists) {
            used.body(list.body(), 1);
            for (Contingent contingent : list.contingents()) {
                used.body(contingent.body(), 1);
            }
        }
        return used.counts;
    }

    private void body(Body body, int times) {
        body.entries().forEach(entry -> entry(entry, times));
        body.supports().forEach(entry -> entry(entry, times));
    }

    private void entry(Entry entry, int times) {
        int all = saturated((long) entry.count() * times);
        counts.merge(entry.what(), all, (a, b) -> saturated((long) a + b));
        body(entry.body(), all);
    }

    // A million times a million is more than any rule asks about.
    private static int saturated(long count) {
        return (int) Math.min(count, Integer.MAX_VALUE);
    }
}
