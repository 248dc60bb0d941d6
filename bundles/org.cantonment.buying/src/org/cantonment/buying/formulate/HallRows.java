package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;

/**
 * Rows by Hall's theorem: for each set of needs, what may stand for any of them is as much as they ask for. Where the sets
 * lie in each other like a tree, its nodes are enough; where a few overlap, all their unions are taken; else there are
 * columns for who stands where.
 */
final class HallRows {

    private static final int UNIONS = 7;

    /** The same set in the same stage has one row, whatever list it is for. */
    private record Node(int stage, int target, Set<Id> types) {
    }

    private final Formulation formulation;
    private final ProgrammeMaker maker;
    private final Choices choices;
    private final Map<Node, Long> rows = new LinkedHashMap<>();
    private final Map<Node, Map<Choices.Key, Sum>> chosen = new LinkedHashMap<>();

    HallRows(Formulation formulation, Choices choices, ProgrammeMaker maker) {
        this.formulation = formulation;
        this.choices = choices;
        this.maker = maker;
    }

    void add(int number, Wants wants) {
        List<NeedGroup> groups = wants.groups();
        List<Set<Id>> sets = new ArrayList<>();
        for (NeedGroup group : groups) {
            Set<Id> all = new TreeSet<>(group.free());
            group.shared().values().forEach(all::addAll);
            all.removeIf(type -> !formulation.obtainable(type));
            all.addAll(formulation.converted(wants, group));
            sets.add(all);
        }
        for (List<Integer> part : connected(sets)) {
            boolean plain = part.stream().allMatch(g -> plain(groups.get(g), wants));
            List<Set<Id>> distinct = List.copyOf(new LinkedHashSet<>(part.stream().map(sets::get).toList()));
            if (plain && (tree(distinct) || distinct.size() <= UNIONS)) {
                for (Set<Id> union : tree(distinct) ? distinct : unions(distinct)) {
                    long needed = part.stream().filter(g -> union.containsAll(sets.get(g)))
                            .mapToLong(g -> groups.get(g).count()).sum();
                    node(number, wants.target().stage(), union, needed);
                }
            } else {
                List<NeedGroup> own = part.stream().map(groups::get).toList();
                new FlowRows(formulation, maker, number, choices.column(number), wants, own).add();
            }
        }
    }

    private static boolean plain(NeedGroup group, Wants wants) {
        return group.shared().isEmpty() && !wants.target().allowance().oneTable();
    }

    private static List<List<Integer>> connected(List<Set<Id>> sets) {
        int[] root = new int[sets.size()];
        Arrays.setAll(root, i -> i);
        Map<Id, Integer> last = new LinkedHashMap<>();
        for (int i = 0; i < root.length; i++) {
            for (Id type : sets.get(i)) {
                Integer before = last.put(type, i);
                if (before != null) {
                    int from = root[before];
                    int to = root[i];
                    Arrays.setAll(root, k -> root[k] == from ? to : root[k]);
                }
            }
        }
        Map<Integer, List<Integer>> parts = new LinkedHashMap<>();
        for (int i = 0; i < root.length; i++) {
            parts.computeIfAbsent(root[i], one -> new ArrayList<>()).add(i);
        }
        return List.copyOf(parts.values());
    }

    private static boolean tree(List<Set<Id>> sets) {
        for (int i = 0; i < sets.size(); i++) {
            for (int k = 0; k < i; k++) {
                Set<Id> one = sets.get(i);
                Set<Id> other = sets.get(k);
                if (one.stream().anyMatch(other::contains) && !one.containsAll(other) && !other.containsAll(one)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static Set<Set<Id>> unions(List<Set<Id>> sets) {
        Set<Set<Id>> unions = new LinkedHashSet<>();
        for (int mask = 1; mask < 1 << sets.size(); mask++) {
            Set<Id> union = new TreeSet<>();
            for (int i = 0; i < sets.size(); i++) {
                if ((mask >> i & 1) == 1) {
                    union.addAll(sets.get(i));
                }
            }
            unions.add(union);
        }
        return unions;
    }

    private void node(int number, int stage, Set<Id> types, long needed) {
        boolean anew = types.stream().anyMatch(formulation::builtAnew);
        Node node = new Node(stage, anew ? number : -1, types);
        if (choices.column(number) == Formulation.NONE) {
            rows.merge(node, needed, Math::max);
        } else {
            chosen.computeIfAbsent(node, key -> new LinkedHashMap<>())
                    .computeIfAbsent(choices.key(number), key -> new Sum()).add(needed, choices.column(number));
        }
    }

    /** Writes the rows, without those that follow from the rows of the sets within. */
    void finish() {
        List<Map.Entry<Node, Long>> all = List.copyOf(rows.entrySet());
        for (Map.Entry<Node, Long> row : all) {
            if (within(row, all) < row.getValue()) {
                Formulation.Supplying there = there(row.getKey());
                maker.atLeast(there.sum(), row.getValue() - there.own());
            }
        }
        chosen.forEach((node, byChoice) -> byChoice.values().forEach(needed -> {
            Formulation.Supplying there = there(node);
            maker.atLeast(there.sum().add(-1, needed), -there.own());
        }));
    }

    private Formulation.Supplying there(Node node) {
        Sum sum = new Sum();
        long own = 0;
        for (Id type : node.types()) {
            Formulation.Supplying supplying = formulation.supply(type, node.stage(), node.target());
            sum.add(1, supplying.sum());
            own += supplying.own();
        }
        return new Formulation.Supplying(sum, own);
    }

    /** What disjoint sets within it need, taken greedily, the greatest first. */
    private static long within(Map.Entry<Node, Long> row, List<Map.Entry<Node, Long>> all) {
        long needed = 0;
        Set<Id> types = row.getKey().types();
        List<Map.Entry<Node, Long>> inner = new ArrayList<>();
        for (Map.Entry<Node, Long> other : all) {
            Node node = other.getKey();
            if (node.stage() == row.getKey().stage() && (node.target() == row.getKey().target() || node.target() < 0)
                    && node.types().size() < types.size() && types.containsAll(node.types())) {
                inner.add(other);
            }
        }
        inner.sort((one, other) -> Integer.compare(other.getKey().types().size(), one.getKey().types().size()));
        Set<Id> taken = new TreeSet<>();
        for (Map.Entry<Node, Long> one : inner) {
            if (one.getKey().types().stream().noneMatch(taken::contains)) {
                taken.addAll(one.getKey().types());
                needed += one.getValue();
            }
        }
        return needed;
    }
}
