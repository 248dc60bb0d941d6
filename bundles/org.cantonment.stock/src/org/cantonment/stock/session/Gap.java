package org.cantonment.stock.session;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;

/**
 * Needs of one or several players that ask for so much together, while all that may stand for any of them, whoever has it,
 * is so much and too little.
 *
 * @param needs the needs, by player
 * @param oneMeaning whether they are too few because a type that stands for itself at a table stands for nothing else there;
 *         then it is what can stand, else all there is
 * @param from what there is for them, by piece type
 */
public record Gap(Map<Id, List<Requirement>> needs, Map<Id, Integer> from, int needed, int there,
        boolean oneMeaning) {

    public Gap {
        needs = Collections.unmodifiableMap(new TreeMap<>(needs));
        from = Collections.unmodifiableMap(new TreeMap<>(from));
    }

    /** How many are short by it. */
    public int lacking() {
        return needed - there;
    }
}
