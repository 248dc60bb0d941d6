package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Way;

/**
 * What a list needs beyond what is there, and about what that costs. Needs are filled one after the other: with what they ask
 * for, then with what may stand in, with parts built for them where pieces will not do. That is quick, and as a rule not far
 * from the truth; nothing but the order of trying hangs on it.
 */
final class Reckoner {

    /** A way to build a part: which type it gives how many of, and what it gives in all. */
    private record Build(int frames, int gives, int[] types, int[] counts) {
    }

    private record Slot(Guide.Kinds kinds, int[] exact, int[] others) {
    }

    private final Guide guide;
    private final Allowance allowance;
    private final Map<Id, Integer> numbers = new HashMap<>();
    private final List<Id> types = new ArrayList<>();
    private final List<List<Build>> builds = new ArrayList<>();
    private final Map<Guide.Kinds, Integer> known = new LinkedHashMap<>();
    private final List<Slot> slots = new ArrayList<>();
    private final List<Map<Integer, Long>> costs = new ArrayList<>();
    private int[] order = {};
    private int[] there = {};
    private int[] frames = {};

    /** @param later how many of each type will be there in the end, and so cost nothing more */
    Reckoner(Guide guide, Allowance allowance, Map<Id, Integer> later) {
        this.guide = guide;
        this.allowance = allowance;
        guide.shelf().stacks().forEach(stack -> {
            int number = number(stack.what());
            there[number] += Math.max(0, stack.counted());
        });
        frames = guide.shelf().frames().stream().mapToInt(Frames::count).toArray();
        for (int f = 0; f < frames.length; f++) {
            for (Way way : guide.shelf().frames().get(f).ways()) {
                build(f, way);
            }
        }
        builds.forEach(some -> some.sort(Comparator.comparingInt((Build build) -> -build.gives())));
        new TreeMap<>(later).forEach(this::later);
    }

    private void build(int frames, Way way) {
        int[] types = way.gives().keySet().stream().mapToInt(this::number).toArray();
        int[] counts = way.gives().values().stream().mapToInt(Integer::intValue).toArray();
        for (int i = 0; i < types.length; i++) {
            if (counts[i] > 0) {
                builds.get(types[i]).add(new Build(frames, counts[i], types, counts));
            }
        }
    }

    /** What later lists need is there then: built if it can be, and bought if not. */
    private void later(Id type, int count) {
        int number = number(type);
        made(number, count, there, frames);
        there[number] = Math.max(there[number], count);
    }

    private int number(Id type) {
        return numbers.computeIfAbsent(type, key -> {
            types.add(key);
            builds.add(new ArrayList<>());
            there = Arrays.copyOf(there, types.size());
            return types.size() - 1;
        });
    }

    /** The number of what a need asks for; the same for all that ask for the same. */
    int slot(List<Id> anyOf, Id unit) {
        return known.computeIfAbsent(guide.kinds(anyOf, unit, allowance), kinds -> {
            slots.add(new Slot(kinds, kinds.exact().stream().mapToInt(this::number).toArray(),
                    kinds.others().stream().mapToInt(this::number).toArray()));
            costs.add(new HashMap<>());
            order = IntStream.range(0, slots.size()).boxed().sorted(Comparator.comparingInt(
                    (Integer slot) -> slots.get(slot).exact().length).thenComparingInt(slot -> slot))
                    .mapToInt(Integer::intValue).toArray();
            return slots.size() - 1;
        });
    }

    /** About what a list costs that has so many needs of each number. */
    long money(int[] have) {
        int[] rest = there.clone();
        int[] parts = frames.clone();
        int[] lacks = new int[have.length];
        boolean[] itself = new boolean[rest.length];
        for (int slot : order) {
            if (slot < have.length && have[slot] > 0) {
                lacks[slot] = have[slot];
                for (int type : slots.get(slot).exact()) {
                    int takes = taken(type, lacks[slot], rest, parts);
                    lacks[slot] -= takes;
                    itself[type] |= takes > 0;
                }
            }
        }
        long money = 0;
        for (int slot : order) {
            if (slot < have.length && lacks[slot] > 0) {
                for (int type : slots.get(slot).others()) {
                    if (lacks[slot] > 0 && !(allowance.oneTable() && itself[type])) {
                        lacks[slot] -= taken(type, lacks[slot], rest, parts);
                    }
                }
                money += cost(slot, lacks[slot]);
            }
        }
        return money;
    }

    private long cost(int slot, int count) {
        return count == 0 ? 0 : costs.get(slot).computeIfAbsent(count, key -> guide.cost(slots.get(slot).kinds(), key));
    }

    private int taken(int type, int wanted, int[] rest, int[] parts) {
        if (wanted > rest[type]) {
            made(type, wanted, rest, parts);
        }
        int takes = Math.min(wanted, rest[type]);
        rest[type] -= takes;
        return takes;
    }

    /** Builds parts until there are so many of a type, as far as there are parts. */
    private void made(int type, int wanted, int[] rest, int[] parts) {
        for (Build build : builds.get(type)) {
            int lacks = wanted - rest[type];
            int times = Math.min(parts[build.frames()], (lacks + build.gives() - 1) / build.gives());
            if (times > 0) {
                parts[build.frames()] -= times;
                for (int i = 0; i < build.types().length; i++) {
                    rest[build.types()[i]] += times * build.counts()[i];
                }
            }
        }
    }
}
