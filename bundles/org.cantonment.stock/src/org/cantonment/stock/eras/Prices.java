package org.cantonment.stock.eras;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;
import org.cantonment.stock.turnout.Depot;

/**
 * What each type is worth in points, so dear that no unit costs less in pieces than it brings in points. Then no army can
 * bring more points than all that lies there is worth. In whole numbers, a thousand to the point.
 */
final class Prices {

    private static final long SCALE = 1000;
    private static final int PASSES = 3;

    private final List<Candidate> candidates;
    private final List<Id> types;
    private final long[] stock;
    private final int[][][] takes;
    private final Depot depot;

    private Prices(Depot depot, List<Candidate> candidates) {
        this.depot = depot;
        this.candidates = candidates;
        Set<Id> all = new TreeSet<>();
        candidates.forEach(one -> all.addAll(depot.usable(one.needs())));
        types = List.copyOf(all);
        Map<Id, Integer> numbers = new HashMap<>();
        types.forEach(type -> numbers.put(type, numbers.size()));
        stock = new long[types.size()];
        depot.supply().stacks().stream().filter(stack -> numbers.containsKey(stack.what()))
                .forEach(stack -> stock[numbers.get(stack.what())] += stack.counted());
        for (Frames frames : depot.supply().frames()) {
            for (Way way : frames.ways()) {
                way.yields().forEach((type, count) -> numbers.computeIfPresent(type, (id, number) -> {
                    stock[number] += (long) count * frames.count();
                    return number;
                }));
            }
        }
        takes = new int[candidates.size()][][];
        for (int c = 0; c < takes.length; c++) {
            List<Requirement> needs = candidates.get(c).needs();
            takes[c] = new int[needs.size()][];
            for (int i = 0; i < takes[c].length; i++) {
                takes[c][i] = depot.usable(List.of(needs.get(i))).stream().mapToInt(numbers::get).toArray();
            }
        }
    }

    /** One list of prices, by what it says of the candidates and of all that is there. */
    record Worth(long[] costs, long all) {

        /** No army with these points, made of what costs so much, can be widened to more points than this. */
        long bound(long points, long spent) {
            return points + Math.max(0, all - spent) / SCALE;
        }
    }

    /** Several lists; each of them bounds. */
    static List<Worth> of(Depot depot, List<Candidate> candidates) {
        Prices prices = new Prices(depot, candidates);
        long[] even = prices.even();
        long[] scarce = prices.scarce();
        List<Worth> lists = new ArrayList<>();
        for (int share = 0; share <= 4; share++) {
            long[] mixed = new long[even.length];
            for (int t = 0; t < mixed.length; t++) {
                mixed[t] = (even[t] * share + scarce[t] * (4 - share) + 3) / 4;
            }
            lists.add(prices.lower(mixed));
        }
        return lists;
    }

    /** A unit's points shared evenly by its pieces. */
    private long[] even() {
        long[] prices = new long[types.size()];
        for (int c = 0; c < takes.length; c++) {
            long each = up(candidates.get(c).step().points() * SCALE, candidates.get(c).pieces());
            for (int[] need : takes[c]) {
                raise(prices, need, each);
            }
        }
        return prices;
    }

    /** A unit's points all on what there is least of for it. */
    private long[] scarce() {
        long[] prices = new long[types.size()];
        for (int c = 0; c < takes.length; c++) {
            List<Requirement> needs = candidates.get(c).needs();
            int scarcest = 0;
            for (int i = 1; i < takes[c].length; i++) {
                if (there(takes[c][i]) * needs.get(scarcest).count() < there(takes[c][scarcest]) * needs.get(i).count()) {
                    scarcest = i;
                }
            }
            raise(prices, takes[c][scarcest], up(candidates.get(c).step().points() * SCALE, needs.get(scarcest).count()));
        }
        return prices;
    }

    private static void raise(long[] prices, int[] need, long price) {
        for (int type : need) {
            prices[type] = Math.max(prices[type], price);
        }
    }

    private long there(int[] need) {
        return Arrays.stream(need).mapToLong(type -> stock[type]).sum();
    }

    private static long up(long points, long by) {
        return (points + by - 1) / by;
    }

    /** Makes each type as cheap as it may be, what there is most of first. */
    private Worth lower(long[] prices) {
        List<Integer> order = new ArrayList<>();
        for (int t = 0; t < prices.length; t++) {
            order.add(t);
        }
        order.sort((one, other) -> Long.compare(stock[other], stock[one]));
        for (int pass = 0; pass < PASSES; pass++) {
            for (int type : order) {
                long low = -1;
                long high = prices[type];
                while (low + 1 < high) {
                    long middle = low + (high - low) / 2;
                    prices[type] = middle;
                    if (dearEnough(prices)) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                prices[type] = high;
            }
        }
        long[] costs = new long[takes.length];
        for (int c = 0; c < costs.length; c++) {
            costs[c] = cost(prices, c);
        }
        return new Worth(costs, all(prices));
    }

    private boolean dearEnough(long[] prices) {
        for (int c = 0; c < takes.length; c++) {
            if (cost(prices, c) < candidates.get(c).step().points() * SCALE) {
                return false;
            }
        }
        return true;
    }

    private long cost(long[] prices, int c) {
        long cost = 0;
        for (int i = 0; i < takes[c].length; i++) {
            long least = Long.MAX_VALUE;
            for (int type : takes[c][i]) {
                least = Math.min(least, prices[type]);
            }
            cost += least * candidates.get(c).needs().get(i).count();
        }
        return cost;
    }

    private long all(long[] prices) {
        Map<Id, Long> worth = new HashMap<>();
        for (int t = 0; t < prices.length; t++) {
            worth.put(types.get(t), prices[t]);
        }
        Supply supply = depot.supply();
        long all = 0;
        Map<Id, Long> spare = new HashMap<>();
        for (Stack stack : supply.stacks()) {
            all += stack.counted() * worth.getOrDefault(stack.what(), 0L);
            spare.merge(stack.what(), (long) stack.counted(), Long::sum);
        }
        for (Frames frames : supply.frames()) {
            all += frames.count() * frames.ways().stream().mapToLong(way -> way.yields().entrySet().stream()
                    .mapToLong(one -> one.getValue() * worth.getOrDefault(one.getKey(), 0L)).sum()).max().orElse(0);
            frames.ways().forEach(way -> way.yields().forEach((type, count) ->
                    spare.merge(type, (long) count * frames.count(), Long::sum)));
        }
        for (Conversion conversion : depot.allowance().conversions()) {
            long times = conversion.times().orElse(Integer.MAX_VALUE);
            for (Map.Entry<Id, Integer> from : conversion.from().entrySet()) {
                times = Math.min(times, spare.getOrDefault(from.getKey(), 0L) / from.getValue());
            }
            all += times * conversion.gives() * worth.getOrDefault(conversion.to(), 0L);
        }
        return all;
    }
}
