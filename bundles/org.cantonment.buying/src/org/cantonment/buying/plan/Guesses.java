package org.cantonment.buying.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** How much of what a plan counts on is only guessed: on the shelf, and in lots that are bought. */
final class Guesses {

    private final Map<Id, Integer> pieces = new HashMap<>();
    private final Map<Id, Integer> frames = new HashMap<>();
    private final Map<Id, Integer> sure = new HashMap<>();

    /** Counts what is guessed of so many alike. */
    void count(Supply supply, int times) {
        for (Stack stack : supply.stacks()) {
            pieces.merge(stack.what(), stack.guessed() * times, Integer::sum);
        }
        for (Frames one : supply.frames()) {
            (one.guessed() ? frames : sure).merge(one.part(), one.count() * times, Integer::sum);
            if (one.guessed() && one.ways().size() == 1) {
                add(one.ways().get(0), one.count() * times);
            }
        }
    }

    private void add(Way way, int times) {
        way.gives().forEach((type, gives) -> pieces.merge(type, gives * times, Integer::sum));
    }

    /** Counts what is built of parts of which there are only guessed to be so many. */
    void build(List<Building> buildings) {
        for (Building one : buildings) {
            int left = sure.getOrDefault(one.part(), 0) - one.count();
            sure.put(one.part(), Math.max(0, left));
            int unsure = Math.min(-left, frames.getOrDefault(one.part(), 0));
            if (unsure > 0) {
                frames.merge(one.part(), -unsure, Integer::sum);
                one.gives().forEach((type, gives) -> pieces.merge(type, gives * unsure, Integer::sum));
            }
        }
    }

    /** So many of so many are told as guessed. */
    Stack told(Id type, int count) {
        int unsure = Math.min(count, pieces.getOrDefault(type, 0));
        return new Stack(type, count - unsure, unsure, 0);
    }
}
