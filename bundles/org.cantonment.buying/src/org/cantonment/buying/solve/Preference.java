package org.cantonment.buying.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is preferred among values of the same cost.
 *
 * @param tiers further costs, one for each column and not below 0, the weightier first
 * @param first among those that are still equal, as much as can be of the first of these columns, then of the next; each of
 *         them costs something or weighs in a tier
 */
public record Preference(List<long[]> tiers, int[] first) {

    /** Any will do. */
    public static final Preference NONE = new Preference(List.of(), new int[0]);

    public Preference {
        tiers = List.copyOf(tiers);
    }

    boolean isNone() {
        return tiers.isEmpty() && first.length == 0;
    }

    /** The same for a part of the programme, whose columns have these numbers in the whole. */
    Preference of(int[] columns) {
        Map<Integer, Integer> numbers = new HashMap<>();
        for (int k = 0; k < columns.length; k++) {
            numbers.put(columns[k], k);
        }
        return new Preference(tiers.stream().map(tier -> Arrays.stream(columns).mapToLong(j -> tier[j]).toArray()).toList(),
                Arrays.stream(first).filter(numbers::containsKey).map(numbers::get).toArray());
    }

    /** What is left when the first tier has been seen to. */
    Preference rest() {
        return new Preference(tiers.subList(1, tiers.size()), first);
    }
}
