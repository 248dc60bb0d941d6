package org.cantonment.stock.turnout;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.stock.turnout.Instance.Crowd;
import org.cantonment.stock.turnout.Instance.Direct;

/** Finds types that the very same classes take, and says so on the ways that they then need not have each. */
final class Crowds {

    private final Direct[] direct;
    /** For each type where its ways begin in the two below; last, how many ways there are. */
    private final int[] first;
    /** The classes that take the types, those of one type behind those of the one before. */
    private final int[] takers;
    /** The places of the types among those that the classes take. */
    private final int[] places;
    private final List<Crowd> crowds = new ArrayList<>();

    private Crowds(Direct[] direct, int types) {
        this.direct = direct;
        first = new int[types + 1];
        for (Direct one : direct) {
            for (int type : one.types()) {
                first[type + 1]++;
            }
        }
        for (int t = 0; t < types; t++) {
            first[t + 1] += first[t];
        }
        takers = new int[first[types]];
        places = new int[takers.length];
        int[] next = first.clone();
        for (int c = 0; c < direct.length; c++) {
            for (int i = 0; i < direct[c].size(); i++) {
                int at = next[direct[c].types()[i]]++;
                takers[at] = c;
                places[at] = i;
            }
        }
    }

    /** @param direct for each class who may stand there; ways that come with a crowd are told so */
    static List<Crowd> of(Direct[] direct, int types) {
        Crowds crowds = new Crowds(direct, types);
        crowds.alike().forEach(crowds::gather);
        return List.copyOf(crowds.crowds);
    }

    /** Types that the very same classes take, two at least of three types at least. */
    private List<int[]> alike() {
        Map<IntBuffer, List<Integer>> alike = new LinkedHashMap<>();
        for (int t = 0; t + 1 < first.length; t++) {
            int count = first[t + 1] - first[t];
            if (count > 1) {
                alike.computeIfAbsent(IntBuffer.wrap(takers, first[t], count), classes -> new ArrayList<>()).add(t);
            }
        }
        return alike.values().stream().filter(some -> some.size() > 2)
                .map(some -> some.stream().mapToInt(Integer::intValue).toArray()).toList();
    }

    private void gather(int[] types) {
        int all = first[types[0] + 1] - first[types[0]];
        int[] classes = new int[all];
        int[] tiers = new int[all];
        int count = 0;
        for (int k = 0; k < all; k++) {
            int tier = tier(k, types);
            if (tier >= 0) {
                classes[count] = k;
                tiers[count++] = tier;
            }
        }
        if (count > 1) {
            for (int i = 0; i < count; i++) {
                join(classes[i], tiers[i], types);
                classes[i] = takers[first[types[0]] + classes[i]];
            }
            crowds.add(new Crowd(types, Arrays.copyOf(classes, count), Arrays.copyOf(tiers, count)));
        }
    }

    /** Those that are as true as this to the k-th class that takes them come with the crowd. */
    private void join(int k, int tier, int[] types) {
        Direct one = direct[takers[first[types[0]] + k]];
        for (int type : types) {
            int at = places[first[type] + k];
            if (one.tiers()[at] == tier) {
                one.crowds()[at] = crowds.size();
            }
        }
    }

    /** How true the types are to the k-th class, the exact ones left aside unless all are; -1 if they differ in that. */
    private int tier(int k, int[] types) {
        int[] tiers = direct[takers[first[types[0]] + k]].tiers();
        int tier = 0;
        for (int type : types) {
            int here = tiers[places[first[type] + k]];
            if (here != tier && here * tier != 0) {
                return -1;
            }
            tier = Math.max(tier, here);
        }
        return tier;
    }
}
