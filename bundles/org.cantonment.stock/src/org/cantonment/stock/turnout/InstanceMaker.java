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

    /** What has to do with each other. */
    private static final class Members {
        private final List<NeedClass> classes = new ArrayList<>();
        private final List<Integer> types = new ArrayList<>();
        private final List<Integer> frames = new ArrayList<>();
        private final List<Conversion> conversions = new ArrayList<>();
    }

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
        int[] ofFrames = maker.joinFrames();
        Map<Integer, Members> apart = new LinkedHashMap<>();
        for (int c = 0; c < classes.size(); c++) {
            apart.computeIfAbsent(maker.find(store.types().size() + c), root -> new Members()).classes.add(classes.get(c));
        }
        for (int t = 0; t < maker.relevant.length; t++) {
            Members members = maker.relevant[t] ? apart.get(maker.find(t)) : null;
            if (members != null) {
                members.types.add(t);
            }
        }
        for (int f = 0; f < ofFrames.length; f++) {
            Members members = ofFrames[f] >= 0 ? apart.get(maker.find(ofFrames[f])) : null;
            if (members != null) {
                members.frames.add(f);
            }
        }
        maker.conversions.forEach(one -> apart.get(maker.find(store.number(one.to()))).conversions.add(one));
        return apart.values().stream().map(one -> new InstancePart(store, one.classes,
                one.types.stream().mapToInt(Integer::intValue).toArray(), one.frames, one.conversions, before).make()).toList();
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
            int root = store.types().size() + c;
            Taker taker = classes.get(c).taker();
            for (int type : taker.types()) {
                root = take(type, root);
            }
            for (Taker.Share share : taker.shares()) {
                for (int type : share.types()) {
                    root = take(type, root);
                }
            }
        }
    }

    /** Joins a type to what has this root already, and says the root of both. */
    private int take(int type, int root) {
        relevant[type] = true;
        int other = find(type);
        leader[root] = other;
        return other;
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

    /** For each kind of frames a type of those that it can give; -1 if nobody wants any of them. */
    private int[] joinFrames() {
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
        return first;
    }
}
