package org.cantonment.buying.formulate;

import java.util.List;
import java.util.Set;

import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;

/**
 * Needs of a target that hang together by what may stand there.
 *
 * @param number the number of the target
 * @param sets for each group, what may fill it, as far as it can be had
 */
record Tangle(int number, Wants wants, List<NeedGroup> groups, List<Set<Id>> sets) {

    Target target() {
        return wants.target();
    }

    /** Whether some pieces keep to shares or have one meaning only. */
    boolean plain() {
        return !wants.target().allowance().oneTable() && groups.stream().allMatch(group -> group.shared().isEmpty());
    }

    /**
     * Whether whatever fills these needs fills those of another tangle, too: each need is there, as great, and as narrow.
     * Shares could be smaller there, so there must be none here.
     */
    boolean covers(Tangle other) {
        boolean meaning = target().allowance().oneTable() || !other.target().allowance().oneTable();
        if (!meaning || target().stage() != other.target().stage() || target().person() != other.target().person()
                || groups.stream().anyMatch(group -> !group.shared().isEmpty())) {
            return false;
        }
        boolean[] used = new boolean[groups.size()];
        for (int g = 0; g < other.groups.size(); g++) {
            int own = narrower(other.groups.get(g), other.sets.get(g), used);
            if (own < 0) {
                return false;
            }
            used[own] = true;
        }
        return true;
    }

    private int narrower(NeedGroup group, Set<Id> set, boolean[] used) {
        for (int g = 0; g < groups.size(); g++) {
            if (!used[g] && groups.get(g).count() >= group.count() && groups.get(g).exact().equals(group.exact())
                    && group.free().containsAll(groups.get(g).free()) && set.containsAll(sets.get(g))) {
                return g;
            }
        }
        return -1;
    }
}
