package org.cantonment.buying.formulate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.market.Ware;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Way;

/** How many of a ware could be of use at the most: more of each type than all needs together nobody wants. */
final class Usefulness {

    private Usefulness() {
    }

    static long[] of(List<Ware> wares, Stores stores, List<Wants> wants) {
        Map<Id, Long> wanted = wanted(wants);
        long[] useful = new long[wares.size()];
        for (int w = 0; w < useful.length; w++) {
            for (Map.Entry<Id, Integer> one : stores.direct(w).entrySet()) {
                useful[w] = Math.max(useful[w], ceil(wanted.getOrDefault(one.getKey(), 0L), one.getValue()));
            }
        }
        for (Pool pool : stores.pools()) {
            long most = 0;
            for (Way way : pool.ways()) {
                for (Id type : way.yields().keySet()) {
                    most += wanted.getOrDefault(type, 0L);
                }
            }
            long builds = most;
            pool.bought().forEach((ware, count) -> useful[ware] = Math.max(useful[ware],
                    pool.room().isEmpty() ? ceil(builds, count) : builds));
        }
        return useful;
    }

    private static long ceil(long number, long by) {
        return (number + by - 1) / by;
    }

    private static Map<Id, Long> wanted(List<Wants> wants) {
        Map<Id, Long> all = new HashMap<>();
        for (Wants one : wants) {
            Map<Id, Long> own = new HashMap<>();
            for (NeedGroup group : one.groups()) {
                group.free().forEach(type -> own.merge(type, (long) group.count(), Long::sum));
                group.shared().values().forEach(types -> types.stream().filter(type -> !group.free().contains(type))
                        .forEach(type -> own.merge(type, (long) group.count(), Long::sum)));
                for (Conversion turn : one.conversions()) {
                    if (group.exact().contains(turn.to())) {
                        turn.from().forEach((type, takes) -> own.merge(type, (long) takes * group.count(), Long::sum));
                    }
                }
            }
            own.forEach((type, count) -> all.merge(type, count, Long::sum));
        }
        return all;
    }
}
