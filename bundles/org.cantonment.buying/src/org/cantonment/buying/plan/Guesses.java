package org.cantonment.buying.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;

/**
 * How much of what a plan counts on is only guessed: on the shelves, and in lots that are bought.
 *
 * @param built the builds that last, by plain names
 */
record Guesses(Question question, List<Purchase> purchases, List<Building> built) {

    /** Of each type so many of those that stand ready for a target are guessed, no more than there are. */
    Map<Id, Integer> of(Target target) {
        Count count = new Count();
        count.add(question.shelves().get(target.person()), 1);
        purchases.stream().filter(one -> one.stage() <= target.stage()).forEach(one -> count.add(one.ware().load(), one.count()));
        built.stream().filter(one -> one.stage() <= target.stage() && one.person() == target.person()).forEach(count::build);
        return count.pieces;
    }

    private static final class Count {

        private final Map<Id, Integer> pieces = new HashMap<>();
        private final Map<Id, Integer> guessed = new HashMap<>();
        private final Map<Id, Integer> sure = new HashMap<>();

        void add(Supply supply, int times) {
            for (Stack stack : supply.stacks()) {
                pieces.merge(stack.what(), stack.guessed() * times, Integer::sum);
            }
            for (Frames one : supply.frames()) {
                (one.guessed() ? guessed : sure).merge(one.part(), one.count() * times, Integer::sum);
                if (one.guessed() && one.ways().size() == 1) {
                    give(one.ways().get(0).gives(), one.count() * times);
                }
            }
        }

        /** What is built of more parts than are sure to be there rests on those that are guessed. */
        void build(Building one) {
            int left = sure.getOrDefault(one.part(), 0) - one.count();
            sure.put(one.part(), Math.max(0, left));
            int unsure = Math.min(-left, guessed.getOrDefault(one.part(), 0));
            if (unsure > 0) {
                guessed.merge(one.part(), -unsure, Integer::sum);
                give(one.gives(), unsure);
            }
        }

        private void give(Map<Id, Integer> gives, int times) {
            gives.forEach((type, count) -> pieces.merge(type, count * times, Integer::sum));
        }
    }
}
