package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ways on from a list that is not legal yet: the edits of the need that leaves the least choice, of which one must be
 * taken. Each stands for all changes that hold it and none of those before it. They come in the order of what must at
 * least be moved, with all needs looked at.
 */
final class Expansion {

    private final State state;
    private final Need need;
    private final List<Need> needs;
    private final List<Need> all;
    private final List<Edit> open;
    private final Bound bound;
    private final int[] numbers;
    private final long[] costs;
    private final Integer[] order;
    private final boolean[] foreseen;
    private int next;
    private int[] positions;
    private State ahead;

    /**
     * @param needs not empty, each with an edit at least
     * @param kept what is not lacking but could be: it only helps to see what must be moved at the least
     * @param open all that may be done, in the order of the needs
     * @param floor what is known to be the least that this state can come to, as a {@link Cost}
     */
    Expansion(State state, List<Need> needs, List<Need> kept, List<Edit> open, long floor) {
        this.state = state;
        this.open = open;
        this.needs = new ArrayList<>(needs);
        this.needs.sort(Comparator.comparingInt(some -> some.edits().size()));
        this.need = this.needs.get(0);
        List<Cover> covers = new ArrayList<>();
        List<Map<Edit, Long>> effects = new ArrayList<>();
        long least = floor;
        for (Need some : this.needs) {
            Cover cover = new Cover(some, state);
            covers.add(cover);
            effects.add(effects(some));
            least = Math.max(least, sum(state.cost(), cover.least()));
        }
        all = new ArrayList<>(needs);
        all.addAll(kept);
        bound = Bound.of(state, open, all);
        least = Math.max(least, sum(state.cost(), bound.least()));
        long beside = beside(covers, effects);
        costs = new long[need.edits().size()];
        numbers = new int[costs.length];
        List<Integer> ways = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < costs.length; i++) {
            costs[i] = Math.max(least, sum(state.cost(), sum(covers.get(0).by(i), beside)));
            Edit edit = need.edits().get(i);
            while (open.get(at) != edit) {
                at++;
            }
            numbers[i] = at;
            costs[i] = Math.max(costs[i], sum(state.cost(), bound.with(at)));
            for (int n = 1; n < covers.size(); n++) {
                long after = covers.get(n).after(effects.get(n).getOrDefault(edit, 0L));
                costs[i] = Math.max(costs[i], sum(state.cost(), sum(edit.least(), after)));
            }
            if (costs[i] < Cost.NEVER) {
                ways.add(i);
            }
        }
        order = ways.toArray(Integer[]::new);
        foreseen = new boolean[costs.length];
        sort();
    }

    private void sort() {
        Arrays.sort(order, next, order.length, Comparator.<Integer>comparingLong(i -> costs[i]).thenComparingInt(i -> i));
    }

    /**
     * Looks closer at the next way on, by what its edit leaves of the needs here.
     *
     * @return whether it comes to more than was known, so that another way may be the next now
     */
    boolean foresee() {
        int child = order[next];
        if (foreseen[child]) {
            return false;
        }
        foreseen[child] = true;
        ahead = child(child);
        long cost = sum(ahead.cost(), Bound.after(ahead, open, all, numbers[child]).least());
        if (cost <= costs[child]) {
            return false;
        }
        costs[child] = cost;
        sort();
        positions = null;
        ahead = null;
        return true;
    }

    private static long sum(long one, long other) {
        return Math.min(Cost.NEVER, one + other);
    }

    private static Map<Edit, Long> effects(Need need) {
        Map<Edit, Long> effects = new HashMap<>();
        for (int i = 0; i < need.edits().size(); i++) {
            effects.put(need.edits().get(i), need.effects()[i]);
        }
        return effects;
    }

    /** What other needs cost at least even if all edits of this one and of each before were taken for them. */
    private long beside(List<Cover> covers, List<Map<Edit, Long>> effects) {
        Set<Edit> used = new HashSet<>(need.edits());
        long sum = 0;
        for (int n = 1; n < needs.size(); n++) {
            Need left = left(needs.get(n), effects.get(n), used);
            if (left != null) {
                Cover cover = left == needs.get(n) ? covers.get(n) : new Cover(left, state);
                sum = sum(sum, cover.least());
                used.addAll(left.edits());
            }
        }
        return sum;
    }

    /** What is left of a need when some edits are taken as often as can be; null if nothing is. */
    private Need left(Need some, Map<Edit, Long> effects, Set<Edit> used) {
        Map<Group, Long> most = new HashMap<>();
        for (Edit edit : some.edits()) {
            if (used.contains(edit)) {
                if (edit.endless()) {
                    return null;
                }
                most.merge(edit.group(), effects.get(edit) * state.spare(edit), Math::max);
            }
        }
        if (most.isEmpty()) {
            return some;
        }
        long deficit = some.deficit();
        for (long effect : most.values()) {
            deficit -= effect;
        }
        return deficit <= 0 ? null
                : Need.of(deficit, some.edits(), edit -> most.containsKey(edit.group()) ? 0 : effects.get(edit));
    }

    boolean hasNext() {
        return next < order.length && costs[order[next]] < Cost.NEVER;
    }

    /** What the next way on comes to at the least, as a {@link Cost}. */
    long cost() {
        return costs[order[next]];
    }

    /** Where those stand that the next way on touches, as early as can be. */
    int[] positions() {
        if (positions == null) {
            positions = earliest(order[next]);
        }
        return positions;
    }

    /** What costs too much together with this way on is not among what comes to just that cost. */
    private int[] earliest(int child) {
        State sister = child(child);
        int count = sister.units();
        int[] all = sister.positions(Math.max(count, Cost.units(costs[child])));
        Map<Group, Integer> taken = new HashMap<>();
        for (int i = 0; i < open.size() && count < all.length; i++) {
            Edit edit = open.get(i);
            boolean cheap = sum(state.cost(), bound.with(numbers[child], i)) <= costs[child];
            if (cheap && !sister.forbidden().get(edit.id()) && edit.kind() != Edit.Kind.UNPIN) {
                count = earliest(sister, edit, all, count, taken);
            }
        }
        Arrays.fill(all, Math.min(count, all.length), all.length, Integer.MAX_VALUE);
        Arrays.sort(all);
        return all;
    }

    private static int earliest(State sister, Edit edit, int[] all, int from, Map<Group, Integer> taken) {
        int count = from;
        if (edit.endless() || edit.group().formation()) {
            while (count < all.length) {
                all[count++] = edit.position();
            }
            return count;
        }
        int left = sister.left(edit.group()) * 2;
        while (count < all.length && taken.merge(edit.group(), 1, Integer::sum) <= left) {
            all[count] = sister.position(edit.group(), (taken.get(edit.group()) - 1) / 2);
            count++;
        }
        return count;
    }

    private State child(int child) {
        BitSet never = (BitSet) state.forbidden().clone();
        for (int i = 0; i < child; i++) {
            never.set(need.edits().get(i).id());
        }
        return state.with(need.edits().get(child), never);
    }

    /** Takes the next way on. */
    State take() {
        State child = ahead == null ? child(order[next]) : ahead;
        next++;
        positions = null;
        ahead = null;
        return child;
    }
}
