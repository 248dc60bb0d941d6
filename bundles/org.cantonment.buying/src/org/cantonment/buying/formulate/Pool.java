package org.cantonment.buying.formulate;

import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Way;

/**
 * Alike parts, wherever they come from, that are built from together.
 *
 * @param ways those worth considering, with what they give of what is needed
 * @param own how many lie on the shelf
 * @param bought how many each ware brings, by the number of the ware
 * @param ready how many of those on the shelf are built already so that they can be rebuilt, by the line that says how
 * @param room caps over what is built from them and perhaps from others, by number
 */
record Pool(Id part, Fixing fixing, List<Way> ways, int own, Map<Integer, Integer> bought,
        Map<Id, Integer> ready, List<Integer> room) {

    Pool {
        ways = List.copyOf(ways);
        bought = Map.copyOf(bought);
        ready = Map.copyOf(ready);
        room = List.copyOf(room);
    }
}
