package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.buying.market.Ware;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** What there is and what wares bring, as far as anything needs it. */
final class Stores {

    private record Kind(Id part, Fixing fixing, List<Way> ways) {
    }

    private final Set<Id> needed;
    private final Set<Id> taken;
    private final Optional<BuildTimes> times;
    private final Map<Id, Integer> own = new HashMap<>();
    private final List<Map<Id, Integer>> direct = new ArrayList<>();
    private final Map<Kind, Pool> shared = new LinkedHashMap<>();
    private final List<Pool> apart = new ArrayList<>();
    private final List<Room> rooms = new ArrayList<>();
    private final List<Pool> plain = new ArrayList<>();
    private final List<Pool> pools = new ArrayList<>();
    private final Map<Id, List<Integer>> giving = new HashMap<>();

    /**
     * @param taken what conversions take
     * @param times how long parts take, where each part that is built counts, even if it leaves no choice
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    Stores(Set<Id> needed, Set<Id> taken, Supply shelf, List<Ware> wares, Optional<BuildTimes> times, CancelToken cancel) {
        this.needed = new HashSet<>(needed);
        this.taken = taken;
        this.times = times;
        count(shelf, own);
        frames(shelf, -1);
        for (int w = 0; w < wares.size(); w++) {
            cancel.check();
            Map<Id, Integer> brings = new HashMap<>();
            count(wares.get(w).load(), brings);
            direct.add(brings);
            frames(wares.get(w).load(), w);
        }
        if (times.isEmpty()) {
            settle();
        }
        pools.addAll(shared.values());
        pools.addAll(apart);
        for (int p = 0; p < pools.size(); p++) {
            for (Id type : given(pools.get(p))) {
                giving.computeIfAbsent(type, id -> new ArrayList<>()).add(p);
            }
        }
    }

    private static Set<Id> given(Pool pool) {
        Set<Id> types = new HashSet<>();
        pool.ways().forEach(way -> types.addAll(way.yields().keySet()));
        return types;
    }

    private void count(Supply supply, Map<Id, Integer> into) {
        for (Stack stack : supply.stacks()) {
            if (needed.contains(stack.what()) && stack.counted() > 0) {
                into.merge(stack.what(), stack.counted(), Integer::sum);
            }
        }
    }

    private void frames(Supply supply, int ware) {
        Map<Integer, List<Integer>> capped = new TreeMap<>();
        for (BoxCap cap : supply.caps()) {
            int number = room(supply, cap, ware);
            if (number >= 0) {
                cap.frames().forEach(at -> capped.computeIfAbsent(at, key -> new ArrayList<>()).add(number));
            }
        }
        for (int at = 0; at < supply.frames().size(); at++) {
            Frames one = supply.frames().get(at);
            List<Integer> under = capped.getOrDefault(at, List.of());
            List<Way> ways = under.isEmpty() ? worthwhile(one) : ways(one);
            if (ways.isEmpty()) {
                continue;
            }
            Map<Integer, Integer> bought = new TreeMap<>();
            if (ware >= 0) {
                bought.put(ware, one.count());
            }
            Map<Id, Integer> ready = ware < 0 && one.built() >= 0
                    ? Map.of(one.ways().get(one.built()).build(), one.count()) : Map.of();
            Pool pool = new Pool(one.part(), one.fixing(), ways, ware < 0 ? one.count() : 0, bought, ready, under);
            if (under.isEmpty()) {
                shared.merge(new Kind(one.part(), one.fixing(), ways), pool, Stores::together);
            } else {
                apart.add(pool);
            }
        }
    }

    private static Pool together(Pool one, Pool other) {
        Map<Integer, Integer> bought = new TreeMap<>(one.bought());
        other.bought().forEach((ware, count) -> bought.merge(ware, count, Integer::sum));
        Map<Id, Integer> ready = new TreeMap<>(one.ready());
        other.ready().forEach((build, count) -> ready.merge(build, count, Integer::sum));
        return new Pool(one.part(), one.fixing(), one.ways(), one.own() + other.own(), bought, ready, List.of());
    }

    /** The number of the cap's room; -1 if it limits nothing that is needed. */
    private int room(Supply supply, BoxCap cap, int ware) {
        int weight = -1;
        for (int at : cap.frames()) {
            for (Way way : supply.frames().get(at).ways()) {
                int counts = weight(way, cap.of());
                if (counts > 0) {
                    weight = weight < 0 || weight == counts ? counts : 0;
                }
            }
        }
        if (weight < 0) {
            return -1;
        }
        int most = weight > 0 ? cap.most() / weight : cap.most();
        rooms.add(new Room(cap.of(), ware < 0 ? most : 0, ware, most, weight));
        return rooms.size() - 1;
    }

    static int weight(Way way, Set<Id> of) {
        int sum = 0;
        for (Map.Entry<Id, Integer> gives : way.gives().entrySet()) {
            sum += of.contains(gives.getKey()) ? gives.getValue() : 0;
        }
        return sum;
    }

    /** Each way with what it gives of what is needed; and to leave the part as it is, if it is needed itself. */
    private List<Way> ways(Frames frames) {
        List<Way> ways = new ArrayList<>(frames.ways());
        if (needed.contains(frames.part())) {
            ways.add(new Way(frames.part(), Map.of(frames.part(), 1)));
        }
        return ways;
    }

    /** Ways cut down to what is needed, without those that another one betters; what stands already may always stay. */
    private List<Way> worthwhile(Frames frames) {
        List<Way> ways = new ArrayList<>();
        Optional<Id> stands = frames.built() < 0 || times.isEmpty() ? Optional.empty()
                : Optional.of(frames.ways().get(frames.built()).build());
        for (Way way : ways(frames)) {
            Way less = cutDown(way);
            boolean stays = stands.filter(less.build()::equals).isPresent();
            if (!less.yields().isEmpty() && (stays || ways.stream().noneMatch(other -> betters(frames.part(), other, less)))) {
                ways.removeIf(other -> betters(frames.part(), less, other) && stands.filter(other.build()::equals).isEmpty());
                ways.add(less);
            }
        }
        return ways;
    }

    private Way cutDown(Way way) {
        return needed.containsAll(way.gives().keySet()) && needed.containsAll(way.leaves().keySet()) ? way
                : new Way(way.build(), needed(way.gives()), needed(way.leaves()));
    }

    private Map<Id, Integer> needed(Map<Id, Integer> counts) {
        Map<Id, Integer> some = new TreeMap<>(counts);
        some.keySet().retainAll(needed);
        return some;
    }

    private boolean betters(Id part, Way one, Way other) {
        Map<Id, Integer> yields = one.yields();
        return times.filter(all -> !all.asSoon(part, one, other)).isEmpty() && other.yields().entrySet().stream()
                .allMatch(least -> yields.getOrDefault(least.getKey(), 0) >= least.getValue());
    }

    /** Parts with one way only are as good as built; but what comes loose between games is not worked over. */
    private void settle() {
        for (Pool pool : List.copyOf(shared.values())) {
            if (pool.ways().size() == 1 && (pool.fixing() != Fixing.LOOSE_BETWEEN_GAMES
                    || pool.ways().get(0).yields().keySet().stream().noneMatch(taken::contains))) {
                pool.ways().get(0).yields().forEach((type, gives) -> {
                    if (pool.own() > 0) {
                        own.merge(type, pool.own() * gives, Integer::sum);
                    }
                    pool.bought().forEach((ware, count) -> direct.get(ware).merge(type, count * gives, Integer::sum));
                });
                plain.add(pool);
                shared.remove(new Kind(pool.part(), pool.fixing(), pool.ways()));
            }
        }
    }

    /** What is ready on the shelf, by type. */
    Map<Id, Integer> own() {
        return own;
    }

    /** What a ware brings ready to hand, by type. */
    Map<Id, Integer> direct(int ware) {
        return direct.get(ware);
    }

    /** Parts that can be built in several ways. */
    List<Pool> pools() {
        return pools;
    }

    /** The numbers of the pools that a type can be built from. */
    List<Integer> giving(Id type) {
        return giving.getOrDefault(type, List.of());
    }

    /** Parts that only one way of building is worth considering for. */
    List<Pool> plain() {
        return plain;
    }

    List<Room> rooms() {
        return rooms;
    }
}
