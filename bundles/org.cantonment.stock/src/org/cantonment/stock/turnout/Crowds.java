package org.cantonment.stock.turnout;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.stock.turnout.Instance.Arc;
import org.cantonment.stock.turnout.Instance.Crowd;

/** Finds types that the very same classes take, and says so on the arcs that they then need not have each. */
final class Crowds {

    private final Arc[][] direct;
    private final List<Crowd> crowds = new ArrayList<>();

    private Crowds(Arc[][] direct) {
        this.direct = direct;
    }

    /** @param direct for each class who may stand there, by types in order; arcs that come with a crowd are changed */
    static List<Crowd> of(Arc[][] direct, int types) {
        Crowds crowds = new Crowds(direct);
        crowds.alike(types).forEach((classes, some) -> crowds.gather(classes.array(), classes.remaining(), some));
        return List.copyOf(crowds.crowds);
    }

    /** The types by the classes that take them. */
    private Map<IntBuffer, List<Integer>> alike(int types) {
        int[][] takers = new int[types][4];
        int[] count = new int[types];
        for (int c = 0; c < direct.length; c++) {
            for (Arc arc : direct[c]) {
                int t = arc.type();
                takers[t] = count[t] == takers[t].length ? Arrays.copyOf(takers[t], 2 * count[t]) : takers[t];
                takers[t][count[t]++] = c;
            }
        }
        Map<IntBuffer, List<Integer>> alike = new LinkedHashMap<>();
        for (int t = 0; t < types; t++) {
            alike.computeIfAbsent(IntBuffer.wrap(takers[t], 0, count[t]), classes -> new ArrayList<>()).add(t);
        }
        alike.keySet().removeIf(classes -> classes.remaining() < 2);
        alike.values().removeIf(some -> some.size() < 3);
        return alike;
    }

    private void gather(int[] takers, int count, List<Integer> some) {
        int[] types = some.stream().mapToInt(Integer::intValue).toArray();
        List<int[]> classes = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            int tier = tier(takers[k], types);
            if (tier >= 0) {
                classes.add(new int[] {takers[k], tier});
            }
        }
        if (classes.size() > 1) {
            for (int[] one : classes) {
                for (int type : types) {
                    int i = at(one[0], type);
                    if (direct[one[0]][i].tier() == one[1]) {
                        direct[one[0]][i] = direct[one[0]][i].with(crowds.size());
                    }
                }
            }
            crowds.add(new Crowd(types, classes.stream().mapToInt(one -> one[0]).toArray(),
                    classes.stream().mapToInt(one -> one[1]).toArray()));
        }
    }

    /** How true the types are to a class, the exact ones left aside unless all are; -1 if they differ in that. */
    private int tier(int c, int[] types) {
        int tier = 0;
        for (int type : types) {
            int here = direct[c][at(c, type)].tier();
            if (here != tier && here * tier != 0) {
                return -1;
            }
            tier = Math.max(tier, here);
        }
        return tier;
    }

    private int at(int c, int type) {
        return at(direct[c], type);
    }

    /** The place of a type among arcs that are in the order of their types. */
    static int at(Arc[] arcs, int type) {
        int from = 0;
        int to = arcs.length - 1;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (arcs[middle].type() < type) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }
}
