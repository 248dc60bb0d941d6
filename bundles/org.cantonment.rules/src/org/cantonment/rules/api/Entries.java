package org.cantonment.rules.api;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;

/** The entries of a list, counted when somebody first asks; hundreds of checks may ask about one list. */
final class Entries {

    private final ForceList list;
    private volatile Map<Entry, Long> copies;
    private volatile Map<Id, Long> counts;

    Entries(ForceList list) {
        this.list = list;
    }

    Map<Entry, Long> copies() {
        Map<Entry, Long> known = copies;
        if (known == null) {
            Map<Entry, Long> all = new LinkedHashMap<>();
            gather(list.body(), 1, all);
            for (Contingent contingent : list.contingents()) {
                gather(contingent.body(), 1, all);
            }
            known = Collections.unmodifiableMap(all);
            copies = known;
        }
        return known;
    }

    private static void gather(Body body, long times, Map<Entry, Long> all) {
        List<Entry> entries = new ArrayList<>(body.entries());
        entries.addAll(body.supports());
        for (Entry entry : entries) {
            all.put(entry, times * entry.count());
            gather(entry.body(), times * entry.count(), all);
        }
    }

    Map<Id, Long> counts() {
        Map<Id, Long> known = counts;
        if (known == null) {
            Map<Id, Long> all = new TreeMap<>();
            copies().forEach((entry, times) -> all.merge(entry.what(), times, Long::sum));
            known = Collections.unmodifiableMap(all);
            counts = known;
        }
        return known;
    }
}
