package org.cantonment.desk.shopping;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;

/**
 * A growth plan with the lists that it is made of.
 *
 * @param targets what was asked for
 * @param lists   the lists, by the ids of their targets
 * @param out     the rounds that it goes on without, by their places, and why
 * @param remarks what else is to be said of its lists
 */
record GrowPlan(Growth growth, List<Target> targets, Map<Id, ForceList> lists, Map<Integer, List<String>> out,
        List<String> remarks) {
    GrowPlan {
        targets = List.copyOf(targets);
        lists = Map.copyOf(lists);
        out = new TreeMap<>(out);
        remarks = List.copyOf(remarks);
    }
}
