package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a need costs at the least, seen by itself: a knapsack that must be filled. Reckoned from the last edit to the
 * first, so that it is known for every rest of the edits, too. Where that would take too long, a bound below it.
 */
final class Cover {

    private static final long MOST_WORK = 600_000;

    private final Need need;
    private final long[] effects;
    private final int deficit;
    /** For each edit: what a deficit costs at least with its own group, of which one is spent, and all later ones. */
    private final long[][] rest;
    private final long[] all;
    private final long scale;
    private long greatest;
    /** The fewest points for an effect: so many for so much. */
    private long cheapest = 1;
    private long worth;

    Cover(Need need, State state) {
        this.need = need;
        scale = scale(need);
        effects = new long[need.edits().size()];
        for (int i = 0; i < effects.length; i++) {
            effects[i] = need.effects()[i] / scale;
            greatest = Math.max(greatest, need.effects()[i]);
            cheaper(Cost.moved(need.edits().get(i).least()), need.effects()[i]);
        }
        long scaled = (need.deficit() + scale - 1) / scale;
        if (scaled * Math.max(1, effects.length) > MOST_WORK) {
            deficit = -1;
            rest = new long[0][];
            all = new long[0];
        } else {
            deficit = (int) scaled;
            rest = new long[effects.length][];
            all = fill(state);
        }
    }

    private static long scale(Need need) {
        long scale = 0;
        for (int i = 0; i < need.edits().size(); i++) {
            scale = gcd(scale, need.effects()[i]);
        }
        return Math.max(1, scale);
    }

    private void cheaper(long moved, long effect) {
        if (worth == 0 || moved * worth < cheapest * effect) {
            cheapest = moved;
            worth = effect;
        }
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    private long[] fill(State state) {
        long[] table = new long[deficit + 1];
        Arrays.fill(table, Cost.NEVER);
        table[0] = 0;
        int last = effects.length;
        for (List<Integer> group : groups()) {
            int first = last - group.size();
            Edit edit = need.edits().get(first);
            if (edit.endless()) {
                table = endless(table, first);
                rest[first] = table;
            } else {
                long spare = Math.min(deficit, state.spare(edit));
                for (long times = 1; times <= spare; times++) {
                    for (int i = first; i < last; i++) {
                        rest[i] = table;
                    }
                    table = once(table, first, last);
                }
            }
            last = first;
        }
        return table;
    }

    /** The runs of edits of one group's copies each, the last first; all else is a run by itself. */
    private List<List<Integer>> groups() {
        List<List<Integer>> groups = new ArrayList<>();
        Group current = null;
        for (int i = effects.length - 1; i >= 0; i--) {
            Edit edit = need.edits().get(i);
            Group group = edit.kind() == Edit.Kind.UNPIN ? null : edit.group();
            if (group == null || group != current) {
                groups.add(new ArrayList<>());
            }
            current = group;
            groups.get(groups.size() - 1).add(i);
        }
        return groups;
    }

    private long[] endless(long[] after, int edit) {
        long[] table = after.clone();
        long cost = need.edits().get(edit).least();
        for (int d = 1; d <= deficit; d++) {
            table[d] = Math.min(table[d], sum(cost, table[(int) Math.max(0, d - effects[edit])]));
        }
        return table;
    }

    private long[] once(long[] after, int first, int last) {
        long[] table = after.clone();
        for (int i = first; i < last; i++) {
            long cost = need.edits().get(i).least();
            for (int d = 1; d <= deficit; d++) {
                table[d] = Math.min(table[d], sum(cost, after[(int) Math.max(0, d - effects[i])]));
            }
        }
        return table;
    }

    private static long sum(long one, long other) {
        return Math.min(Cost.NEVER, one + other);
    }

    /** What it costs at least to be rid of the need. */
    long least() {
        return after(0);
    }

    /** The same when so much of the deficit is made up for. */
    long after(long effect) {
        if (effect >= need.deficit()) {
            return 0;
        }
        if (effects.length == 0) {
            return Cost.NEVER;
        }
        return deficit < 0 ? below(need.deficit() - effect)
                : all[(int) ((need.deficit() - effect + scale - 1) / scale)];
    }

    /** What it costs at least if this edit is the first of them that is taken. */
    long by(int edit) {
        long cost = need.edits().get(edit).least();
        long left = need.deficit() - need.effects()[edit];
        if (left <= 0) {
            return cost;
        }
        return sum(cost, deficit < 0 ? below(left) : rest[edit][(int) ((left + scale - 1) / scale)]);
    }

    private long below(long left) {
        return Cost.of((left * cheapest + worth - 1) / worth, (left + greatest - 1) / greatest);
    }
}
