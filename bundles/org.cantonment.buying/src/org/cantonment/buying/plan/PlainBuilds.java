package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.formulate.BuildKey;
import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.turnout.Turnout;

/** How many of the parts that leave no choice are built, and when: no more than stand somewhere, no sooner than they do. */
final class PlainBuilds {

    private final Question question;
    private final Map<BuildKey, Long> parts;
    private final List<Turnout> turnouts;
    private final List<List<Building>> alone;
    private final Shares shares;

    /** @param alone for each turnout what is built for it alone */
    PlainBuilds(Question question, Map<BuildKey, Long> parts, List<Turnout> turnouts, List<List<Building>> alone,
            Shares shares) {
        this.alone = alone;
        this.shares = shares;
        this.question = question;
        this.parts = new TreeMap<>(parts);
        this.turnouts = turnouts;
    }

    /** The builds chosen, and these after them, by stage. */
    List<Building> after(List<Purchase> purchases, List<Building> chosen) {
        List<Building> all = new ArrayList<>(chosen);
        Map<Id, Integer> built = new TreeMap<>();
        for (int stage = 0; stage < question.stages().size(); stage++) {
            Map<Id, Integer> missing = missing(stage, purchases, chosen, built);
            for (Map.Entry<BuildKey, Long> one : parts.entrySet()) {
                int count = (int) Math.min(one.getValue(), most(one.getKey(), missing));
                if (count > 0) {
                    BuildKey key = one.getKey();
                    all.add(new Building(key.part(), key.build(), key.fixing(), count, count, stage, 0,
                            key.gives()));
                    one.setValue(one.getValue() - count);
                    key.gives().forEach((type, gives) -> {
                        built.merge(type, gives * count, Integer::sum);
                        missing.merge(type, -gives * count, Integer::sum);
                    });
                }
            }
        }
        all.sort(Comparator.comparingInt(Building::stage).thenComparing(Building::part).thenComparing(Building::build));
        return all;
    }

    private static long most(BuildKey key, Map<Id, Integer> missing) {
        long most = 0;
        for (Map.Entry<Id, Integer> gives : key.gives().entrySet()) {
            int wanted = missing.getOrDefault(gives.getKey(), 0);
            most = Math.max(most, (wanted + gives.getValue() - 1) / gives.getValue());
        }
        return most;
    }

    /** What stands in a stage and is neither ready to hand nor built of other parts. */
    private Map<Id, Integer> missing(int stage, List<Purchase> purchases, List<Building> chosen, Map<Id, Integer> built) {
        Map<Id, Integer> missing = new TreeMap<>();
        for (int t = 0; t < turnouts.size(); t++) {
            if (question.targets().get(t).stage() == stage) {
                Map<Id, Integer> own = Standing.of(turnouts.get(t), shares, question.targets().get(t).person());
                alone.get(t).forEach(one -> one.gives().forEach((type, gives) -> take(own, type, gives * one.count())));
                own.forEach((type, count) -> missing.merge(type, count, Math::max));
            }
        }
        shares.shelves(question.shelves()).stacks().forEach(stack -> take(missing, stack.what(), stack.counted()));
        for (Purchase one : purchases) {
            if (one.stage() <= stage) {
                shares.load(one.ware()).stacks().forEach(stack -> take(missing, stack.what(), stack.counted() * one.count()));
            }
        }
        for (Building one : chosen) {
            if (one.fixing() == Fixing.GLUED ? one.stage() <= stage : one.stage() == stage) {
                one.gives().forEach((type, gives) -> take(missing, type, gives * one.count()));
            }
        }
        built.forEach((type, count) -> take(missing, type, count));
        return missing;
    }

    private static void take(Map<Id, Integer> missing, Id type, int count) {
        missing.computeIfPresent(type, (id, left) -> left - count);
    }
}
