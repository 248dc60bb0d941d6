package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;

/**
 * Rows by Hall's theorem: for each set of needs, what may stand for any of them is as much as they ask for. Where the sets
 * lie in each other like a tree, its nodes are enough; where a few overlap, their unions are taken; else there are columns
 * for who stands where.
 */
final class HallRows {

    /** The same set in the same stage has one row, whatever list it is for. */
    private record Node(int stage, int target, Set<Id> types) {
    }

    private final Formulation formulation;
    private final ProgrammeMaker maker;
    private final Choices choices;
    private final CancelToken cancel;
    private final Map<Node, Long> rows = new LinkedHashMap<>();
    private final Map<Node, Map<Choices.Key, Sum>> chosen = new LinkedHashMap<>();
    private final List<Tangle> tangles = new ArrayList<>();

    HallRows(Formulation formulation, Choices choices, ProgrammeMaker maker, CancelToken cancel) {
        this.cancel = cancel;
        this.formulation = formulation;
        this.choices = choices;
        this.maker = maker;
    }

    void add(int number, Wants wants) {
        for (Tangle tangle : tangles(formulation, number, wants)) {
            cancel.check();
            if (!tangle.plain() || !nodes(tangle)) {
                tangles.add(tangle);
            }
        }
    }

    /** The needs of a target in parts that share nothing. */
    static List<Tangle> tangles(Formulation formulation, int number, Wants wants) {
        List<NeedGroup> groups = wants.groups();
        List<Set<Id>> sets = new ArrayList<>();
        for (NeedGroup group : groups) {
            Set<Id> all = new TreeSet<>(group.free());
            group.shared().values().forEach(all::addAll);
            all.removeIf(type -> !formulation.obtainable(type));
            all.addAll(formulation.converted(wants, group));
            sets.add(all);
        }
        return connected(sets).stream().map(part -> new Tangle(number, wants, part.stream().map(groups::get).toList(),
                part.stream().map(sets::get).toList())).toList();
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

    private boolean nodes(Tangle tangle) {
        List<Set<Id>> distinct = List.copyOf(new LinkedHashSet<>(tangle.sets()));
        List<Set<Id>> unions = tree(distinct) ? distinct : unions(tangle, distinct);
        for (Set<Id> union : unions) {
            node(tangle.number(), tangle.target().stage(), union, needed(tangle, union));
        }
        return !unions.isEmpty();
    }

    private static long needed(Tangle tangle, Set<Id> union) {
        long needed = 0;
        for (int g = 0; g < tangle.groups().size(); g++) {
            needed += union.containsAll(tangle.sets().get(g)) ? tangle.groups().get(g).count() : 0;
        }
        return needed;
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

    private List<Set<Id>> unions(Tangle tangle, List<Set<Id>> distinct) {
        List<Id> types = distinct.stream().flatMap(Set::stream).distinct().toList();
        List<BitSet> sets = new ArrayList<>();
        List<Long> counts = new ArrayList<>();
        for (Set<Id> one : distinct) {
            BitSet set = new BitSet();
            one.forEach(type -> set.set(types.indexOf(type)));
            sets.add(set);
            counts.add(0L);
        }
        long[] most = new long[types.size()];
        Arrays.fill(most, Long.MAX_VALUE);
        return Unions.of(sets, counts, most, cancel).stream().map(union -> {
            Set<Id> all = new TreeSet<>();
            union.forEach(g -> all.addAll(distinct.get(g)));
            return all;
        }).distinct().map(one -> (Set<Id>) one).toList();
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
            cancel.check();
            if (within(row, all) < row.getValue()) {
                Formulation.Supplying there = there(row.getKey());
                maker.atLeast(there.sum(), row.getValue() - there.own());
            }
        }
        chosen.forEach((node, byChoice) -> byChoice.values().forEach(needed -> {
            Formulation.Supplying there = there(node);
            maker.atLeast(there.sum().add(-1, needed), -there.own());
        }));
        for (Tangle tangle : uncovered()) {
            cancel.check();
            int column = choices.column(tangle.number());
            if (!new MeaningRows(formulation, maker, tangle, column).add(cancel)) {
                new FlowRows(formulation, maker, tangle.number(), column, tangle.wants(), tangle.groups()).add(cancel);
            }
        }
    }

    /** The tangles without those that ask for no more than another one; of two that ask for the same the first stays. */
    private List<Tangle> uncovered() {
        List<Tangle> all = new ArrayList<>();
        List<Tangle> greatest = new ArrayList<>();
        for (Tangle one : tangles) {
            cancel.check();
            if (choices.column(one.number()) != Formulation.NONE
                    || one.sets().stream().flatMap(Set::stream).anyMatch(formulation::builtAnew)) {
                all.add(one);
            } else if (greatest.stream().noneMatch(other -> other.covers(one))) {
                greatest.removeIf(one::covers);
                greatest.add(one);
            }
        }
        all.addAll(greatest);
        return all;
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
