package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Way;

/** Puts one instance into its own numbers. */
final class InstancePart {

    private final Store store;
    private final List<NeedClass> classes;
    private final int[] types;
    private final List<Integer> frames;
    private final List<Conversion> conversions;
    private final Before before;
    private final int[] local;

    InstancePart(Store store, List<NeedClass> classes, int[] types, List<Integer> frames, List<Conversion> conversions,
            Before before) {
        this.store = store;
        this.classes = classes;
        this.types = types;
        this.frames = frames;
        this.conversions = conversions;
        this.before = before;
        local = new int[store.types().size()];
        Arrays.fill(local, -1);
        for (int t = 0; t < types.length; t++) {
            local[types[t]] = t;
        }
    }

    Instance make() {
        int[] known = new int[types.length];
        int[] guessed = new int[types.length];
        int[] unknown = new int[types.length];
        List<Id> ids = new ArrayList<>();
        for (int t = 0; t < types.length; t++) {
            ids.add(store.types().get(types[t]));
            Stack stack = store.stack(types[t]);
            if (stack != null) {
                known[t] = stack.known();
                guessed[t] = stack.guessed();
                unknown[t] = stack.unknown();
            }
        }
        List<Instance.Lump> lumps = lumps();
        Instance.Direct[] direct = direct();
        List<Instance.Crowd> crowds = store.allowance().oneTable() ? List.of() : Crowds.of(direct, types.length);
        return new Instance(ids, known, guessed, unknown, classes, direct,
                store.allowance().standIns(), before(direct, ids), crowds, hubs(), lumps, rooms(lumps),
                turns(lumps, known, guessed), store.allowance().oneTable());
    }

    private Instance.Direct[] direct() {
        Instance.Direct[] direct = new Instance.Direct[classes.size()];
        for (int c = 0; c < direct.length; c++) {
            Taker taker = classes.get(c).taker();
            int[] own = new int[taker.types().length];
            for (int i = 0; i < own.length; i++) {
                own[i] = local[taker.types()[i]];
            }
            int[] alone = new int[own.length];
            Arrays.fill(alone, -1);
            direct[c] = new Instance.Direct(own, taker.tiers(), taker.lines(), alone);
        }
        return direct;
    }

    /** For each direct way how many who stood there last time may stand there again; none if nobody did. */
    private int[][] before(Instance.Direct[] direct, List<Id> ids) {
        if (classes.stream().noneMatch(one -> one.needs().stream().anyMatch(before.stood()::containsKey))) {
            return new int[0][];
        }
        int[][] all = new int[direct.length][];
        for (int c = 0; c < all.length; c++) {
            all[c] = new int[direct[c].size()];
            for (Requirement need : classes.get(c).needs()) {
                int left = need.count();
                for (int i = 0; i < all[c].length; i++) {
                    int again = Math.min(left, before.stood(need, ids.get(direct[c].types()[i])));
                    all[c][i] += again;
                    left -= again;
                }
            }
        }
        return all;
    }

    private List<Instance.Hub> hubs() {
        Map<Taker.Share, List<Integer>> members = new LinkedHashMap<>();
        for (int c = 0; c < classes.size(); c++) {
            for (Taker.Share share : classes.get(c).taker().shares()) {
                members.computeIfAbsent(share, id -> new ArrayList<>()).add(c);
            }
        }
        List<Instance.Hub> hubs = new ArrayList<>();
        members.forEach((share, served) -> {
            StandIn line = store.allowance().standIns().get(share.line());
            long asked = served.stream().mapToLong(c -> classes.get(c).count()).sum();
            hubs.add(new Instance.Hub(line, line.most((int) Math.min(Integer.MAX_VALUE / 8, asked)),
                    share.types().stream().mapToInt(type -> local[type]).toArray(),
                    served.stream().mapToInt(Integer::intValue).toArray()));
        });
        return hubs;
    }

    private List<Instance.Lump> lumps() {
        List<Instance.Lump> lumps = new ArrayList<>();
        int from = 0;
        for (int f : frames) {
            Frames one = store.supply().frames().get(f);
            int[][] gives = new int[one.ways().size()][types.length];
            for (int w = 0; w < gives.length; w++) {
                int[] row = gives[w];
                one.ways().get(w).yields().forEach((type, count) -> {
                    int here = local[store.number(type)];
                    if (here >= 0) {
                        row[here] = count;
                    }
                });
            }
            lumps.add(Instance.Lump.of(one, from, gives));
            from += gives.length;
        }
        return lumps;
    }

    private List<Instance.Room> rooms(List<Instance.Lump> lumps) {
        int ways = lumps.stream().mapToInt(Instance.Lump::ways).sum();
        List<Instance.Room> rooms = new ArrayList<>();
        for (BoxCap cap : store.supply().caps()) {
            List<Integer> under = new ArrayList<>();
            int[] weights = new int[ways];
            for (int l = 0; l < lumps.size(); l++) {
                if (cap.frames().contains(frames.get(l))) {
                    under.add(l);
                    List<Way> all = lumps.get(l).frames().ways();
                    for (int w = 0; w < all.size(); w++) {
                        weights[lumps.get(l).from() + w] = all.get(w).gives().entrySet().stream()
                                .filter(one -> cap.of().contains(one.getKey())).mapToInt(Map.Entry::getValue).sum();
                    }
                }
            }
            if (!under.isEmpty()) {
                boolean[] capped = new boolean[types.length];
                for (int t = 0; t < capped.length; t++) {
                    Id type = store.types().get(types[t]);
                    capped[t] = cap.of().contains(type) && under.stream().noneMatch(l -> lumps.get(l).frames().ways().stream()
                            .anyMatch(way -> way.leaves().containsKey(type)));
                }
                rooms.add(new Instance.Room(cap.cap(), cap.most(), weights, under, capped));
            }
        }
        return rooms;
    }

    private List<Instance.Turn> turns(List<Instance.Lump> lumps, int[] known, int[] guessed) {
        List<Instance.Turn> turns = new ArrayList<>();
        long[] spare = new long[types.length];
        for (int t = 0; t < spare.length; t++) {
            spare[t] = (long) known[t] + guessed[t];
        }
        lumps.forEach(lump -> lump.addMost(spare));
        for (Conversion conversion : conversions) {
            int to = local[store.number(conversion.to())];
            int[] from = conversion.from().keySet().stream().mapToInt(id -> local[store.number(id)]).toArray();
            int[] takes = conversion.from().values().stream().mapToInt(Integer::intValue).toArray();
            long wanted = 0;
            for (NeedClass one : classes) {
                for (int i = 0; i < one.taker().types().length; i++) {
                    if (local[one.taker().types()[i]] == to && one.taker().tiers()[i] == Truth.EXACT.ordinal()) {
                        wanted += one.count();
                    }
                }
            }
            long most = Math.min(conversion.times().orElse(Integer.MAX_VALUE),
                    (wanted + conversion.gives() - 1) / conversion.gives());
            int scarce = -1;
            for (int k = 0; k < from.length; k++) {
                most = Math.min(most, spare[from[k]] / takes[k]);
                if (takes[k] >= conversion.gives() && (scarce < 0 || spare[from[k]] < spare[scarce])) {
                    scarce = from[k];
                }
            }
            if (most > 0) {
                turns.add(new Instance.Turn(conversion, from, takes, to, (int) most, scarce));
            }
        }
        return turns;
    }
}
