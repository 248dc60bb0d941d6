package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;

/**
 * Rows by Hall's theorem for needs whose pieces keep to shares or have one meaning: how many of a type stand for themselves,
 * how many for others, and how many by each line with a share, is a column each; what stands in one of these ways counts as
 * a type of its own. Who of them stands where needs no columns.
 */
final class MeaningRows {

    private static final int PLAIN = -1;
    private static final int ITSELF = -2;
    private static final int OTHERS = -3;

    /** In what way a type stands: by a line of likeness, or as one of the above. */
    private record Way(Id type, int how) {
    }

    private final Formulation formulation;
    private final ProgrammeMaker maker;
    private final Tangle tangle;
    private final int chosen;
    private final List<Set<Way>> ways = new ArrayList<>();
    private final Map<Way, Long> most = new LinkedHashMap<>();
    private final Map<Integer, Integer> asked = new TreeMap<>();
    /** What conversions give, by the type that it is: where it stands, that type stands for itself. */
    private final Map<Id, Set<Id>> workedOver = new TreeMap<>();

    /** @param chosen the column that says whether the target stands; {@link Formulation#NONE} if it must */
    MeaningRows(Formulation formulation, ProgrammeMaker maker, Tangle tangle, int chosen) {
        this.formulation = formulation;
        this.maker = maker;
        this.tangle = tangle;
        this.chosen = chosen;
        tangle.groups().forEach(this::tell);
    }

    private void tell(NeedGroup group) {
        Set<Way> own = new TreeSet<>((one, other) -> one.type().equals(other.type())
                ? Integer.compare(one.how(), other.how()) : one.type().compareTo(other.type()));
        for (Id type : group.free()) {
            if (formulation.obtainable(type)) {
                own.add(new Way(type, group.exact().contains(type) ? itself(type) : others(type)));
            }
        }
        formulation.workedOver(tangle.wants(), group).forEach((given, type) -> {
            boolean twofold = twofold(type);
            own.add(new Way(given, twofold ? ITSELF : PLAIN));
            if (twofold) {
                workedOver.computeIfAbsent(type, id -> new TreeSet<>()).add(given);
            }
        });
        group.shared().forEach((line, types) -> {
            asked.merge(line, group.count(), Integer::sum);
            types.stream().filter(type -> formulation.obtainable(type) && !group.free().contains(type))
                    .forEach(type -> own.add(new Way(type, line)));
        });
        own.forEach(way -> most.merge(way, (long) group.count(), Long::sum));
        ways.add(own);
    }

    private int itself(Id type) {
        return told(type) ? ITSELF : PLAIN;
    }

    private int others(Id type) {
        return told(type) ? OTHERS : PLAIN;
    }

    private boolean shared(Id type) {
        return tangle.groups().stream().anyMatch(group -> !group.free().contains(type)
                && group.shared().values().stream().anyMatch(types -> types.contains(type)));
    }

    /** Whether it matters how the type stands. */
    private boolean told(Id type) {
        return shared(type) || twofold(type);
    }

    /** Whether the type could have two meanings where it must have one. */
    private boolean twofold(Id type) {
        return tangle.target().allowance().oneTable()
                && tangle.groups().stream().anyMatch(group -> group.exact().contains(type))
                && (shared(type) || tangle.groups().stream().anyMatch(group -> group.free().contains(type)
                        && !group.exact().contains(type)));
    }

    /** Writes the rows; says whether there were few enough, else nothing was written. */
    boolean add(CancelToken cancel) {
        List<Way> all = List.copyOf(most.keySet());
        List<BitSet> sets = new ArrayList<>();
        List<Long> counts = new ArrayList<>();
        for (int g = 0; g < ways.size(); g++) {
            BitSet set = new BitSet();
            ways.get(g).forEach(way -> set.set(all.indexOf(way)));
            int same = sets.indexOf(set);
            if (same < 0) {
                sets.add(set);
                counts.add((long) tangle.groups().get(g).count());
            } else {
                counts.set(same, counts.get(same) + tangle.groups().get(g).count());
            }
        }
        long[] bounds = all.stream().mapToLong(way -> way.how() == PLAIN ? Long.MAX_VALUE : most.get(way)).toArray();
        List<List<Integer>> unions = Unions.of(sets, counts, bounds, cancel);
        if (unions.isEmpty()) {
            return false;
        }
        Map<Way, Integer> columns = stand();
        for (List<Integer> union : unions) {
            BitSet members = new BitSet();
            union.forEach(g -> members.or(sets.get(g)));
            row(all, members, union.stream().mapToLong(counts::get).sum(), columns);
        }
        return true;
    }

    private void row(List<Way> all, BitSet members, long needed, Map<Way, Integer> columns) {
        Sum sum = new Sum();
        long own = 0;
        for (int i = members.nextSetBit(0); i >= 0; i = members.nextSetBit(i + 1)) {
            Way way = all.get(i);
            if (way.how() == PLAIN) {
                Formulation.Supplying there = formulation.supply(way.type(), tangle.target().stage(), tangle.number());
                sum.add(1, there.sum());
                own += there.own();
            } else {
                sum.add(1, columns.get(way));
            }
        }
        if (chosen == Formulation.NONE) {
            maker.atLeast(sum, needed - own);
        } else {
            maker.atLeast(sum.add(-needed, chosen), -own);
        }
    }

    /** The columns for how types stand, with their rows. */
    private Map<Way, Integer> stand() {
        Map<Way, Integer> columns = new LinkedHashMap<>();
        Map<Id, Sum> used = new TreeMap<>();
        Map<Integer, Sum> byLine = new TreeMap<>();
        most.forEach((way, count) -> {
            if (way.how() != PLAIN) {
                int column = maker.column(way.type() + " stands in " + tangle.target().id() + " by " + way.how(), 0, 0, count, 4);
                columns.put(way, column);
                used.computeIfAbsent(way.type(), type -> new Sum()).add(1, column);
                if (way.how() >= 0) {
                    byLine.computeIfAbsent(way.how(), line -> new Sum()).add(1, column);
                }
            }
        });
        used.forEach((type, sum) -> {
            Formulation.Supplying there = formulation.supply(type, tangle.target().stage(), tangle.number());
            maker.atLeast(new Sum().add(1, there.sum()).add(-1, sum), -there.own());
            if (twofold(type)) {
                mean(type, columns);
            }
        });
        byLine.forEach((line, sum) -> maker.atMost(sum,
                tangle.target().allowance().standIns().get(line).most(asked.get(line))));
        return columns;
    }

    private void mean(Id type, Map<Way, Integer> columns) {
        int means = maker.column(type + " stands for itself in " + tangle.target().id(), 0, 0, 1, -2);
        Sum others = new Sum();
        long all = 0;
        for (Map.Entry<Way, Integer> one : columns.entrySet()) {
            if (one.getKey().type().equals(type) && one.getKey().how() != ITSELF) {
                others.add(1, one.getValue());
                all += most.get(one.getKey());
            }
        }
        standsForItself(new Way(type, ITSELF), means, columns);
        workedOver.getOrDefault(type, Set.of()).forEach(given -> standsForItself(new Way(given, ITSELF), means, columns));
        maker.atMost(others.add(all, means), all);
    }

    private void standsForItself(Way way, int means, Map<Way, Integer> columns) {
        maker.atLeast(new Sum().add(most.get(way), means).add(-1, columns.get(way)), 0);
    }
}
