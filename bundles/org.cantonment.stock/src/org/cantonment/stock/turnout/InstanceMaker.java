package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Way;

/** Takes a question apart into instances that have nothing to do with each other. */
final class InstanceMaker {

    private final Store store;
    private final List<NeedClass> classes;
    private final int[] leader;
    private final boolean[] relevant;
    private final List<Conversion> conversions = new ArrayList<>();

    private InstanceMaker(Store store, List<NeedClass> classes) {
        this.store = store;
        this.classes = classes;
        leader = new int[store.types().size() + classes.size()];
        Arrays.setAll(leader, i -> i);
        relevant = new boolean[store.types().size()];
    }

    static List<Instance> of(Store store, List<NeedClass> classes) {
        return of(store, classes, Before.NOTHING);
    }

    static List<Instance> of(Store store, List<NeedClass> classes, Before before) {
        InstanceMaker maker = new InstanceMaker(store, classes);
        maker.joinClasses();
        maker.joinConversions();
        maker.joinFrames();
        Map<Integer, List<Integer>> apart = new LinkedHashMap<>();
        for (int c = 0; c < classes.size(); c++) {
            apart.computeIfAbsent(maker.find(store.types().size() + c), root -> new ArrayList<>()).add(c);
        }
        List<Instance> instances = new ArrayList<>();
        apart.forEach((root, members) -> instances.add(new InstancePart(store, maker.pick(members), maker.typesOf(root),
                maker.framesOf(root), maker.conversionsOf(root), before).make()));
        return instances;
    }

    private int find(int node) {
        int root = node;
        while (leader[root] != root) {
            root = leader[root];
        }
        for (int at = node; leader[at] != root;) {
            int following = leader[at];
            leader[at] = root;
            at = following;
        }
        return root;
    }

    private void join(int one, int other) {
        leader[find(one)] = find(other);
    }

    private void joinClasses() {
        for (int c = 0; c < classes.size(); c++) {
            Taker taker = classes.get(c).taker();
            for (int type : taker.types()) {
                relevant[type] = true;
                join(type, store.types().size() + c);
            }
            for (Taker.Share share : taker.shares()) {
                for (int type : share.types()) {
                    relevant[type] = true;
                    join(type, store.types().size() + c);
                }
            }
        }
    }

    private void joinConversions() {
        boolean[] wanted = new boolean[relevant.length];
        for (NeedClass one : classes) {
            for (int i = 0; i < one.taker().types().length; i++) {
                wanted[one.taker().types()[i]] |= one.taker().tiers()[i] == Truth.EXACT.ordinal();
            }
        }
        for (Conversion conversion : store.allowance().conversions()) {
            int to = store.number(conversion.to());
            if (wanted[to]) {
                conversions.add(conversion);
                for (Id from : conversion.from().keySet()) {
                    relevant[store.number(from)] = true;
                    join(store.number(from), to);
                }
            }
        }
    }

    private void joinFrames() {
        int[] first = new int[store.supply().frames().size()];
        for (int f = 0; f < first.length; f++) {
            first[f] = -1;
            for (Way way : store.supply().frames().get(f).ways()) {
                for (Id type : way.yields().keySet()) {
                    int number = store.number(type);
                    if (relevant[number]) {
                        first[f] = first[f] < 0 ? number : first[f];
                        join(first[f], number);
                    }
                }
            }
        }
        for (BoxCap cap : store.supply().caps()) {
            List<Integer> useful = cap.frames().stream().filter(f -> first[f] >= 0).toList();
            for (int f : useful) {
                join(first[useful.get(0)], first[f]);
            }
        }
    }

    private List<NeedClass> pick(List<Integer> members) {
        return members.stream().map(classes::get).toList();
    }

    private int[] typesOf(int root) {
        List<Integer> types = new ArrayList<>();
        for (int t = 0; t < relevant.length; t++) {
            if (relevant[t] && find(t) == root) {
                types.add(t);
            }
        }
        return types.stream().mapToInt(Integer::intValue).toArray();
    }

    private List<Integer> framesOf(int root) {
        List<Integer> frames = new ArrayList<>();
        for (int f = 0; f < store.supply().frames().size(); f++) {
            Frames one = store.supply().frames().get(f);
            if (one.ways().stream().flatMap(way -> way.yields().keySet().stream()).map(store::number)
                    .anyMatch(type -> relevant[type] && find(type) == root)) {
                frames.add(f);
            }
        }
        return frames;
    }

    private List<Conversion> conversionsOf(int root) {
        return conversions.stream().filter(one -> find(store.number(one.to())) == root).toList();
    }
}
