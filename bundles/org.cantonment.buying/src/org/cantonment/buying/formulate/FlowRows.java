package org.cantonment.buying.formulate;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;

/** Columns for who stands where, for needs that overlap in many ways, keep to shares, or give each type one meaning. */
final class FlowRows {

    private final Formulation formulation;
    private final ProgrammeMaker maker;
    private final int number;
    private final int chosen;
    private final Wants wants;
    private final List<NeedGroup> groups;
    private final Map<Id, Sum> uses = new TreeMap<>();
    private final Map<Id, Sum> asItself = new TreeMap<>();
    private final Map<Id, Sum> asOthers = new TreeMap<>();
    private final Map<Integer, Sum> byLine = new TreeMap<>();
    private final Map<Integer, Integer> asked = new TreeMap<>();

    /** @param chosen the column that says whether the target stands; {@link Formulation#NONE} if it must */
    FlowRows(Formulation formulation, ProgrammeMaker maker, int number, int chosen, Wants wants, List<NeedGroup> groups) {
        this.formulation = formulation;
        this.maker = maker;
        this.number = number;
        this.chosen = chosen;
        this.wants = wants;
        this.groups = groups;
    }

    void add() {
        groups.forEach(this::fill);
        int stage = wants.target().stage();
        uses.forEach((type, used) -> {
            Formulation.Supplying supplying = formulation.supply(type, stage, number);
            maker.atLeast(new Sum().add(1, supplying.sum()).add(-1, used), -supplying.own());
        });
        byLine.forEach((line, sum) -> maker.atMost(sum,
                wants.target().allowance().standIns().get(line).most(asked.get(line))));
        if (wants.target().allowance().oneTable()) {
            oneMeaning();
        }
    }

    private void fill(NeedGroup group) {
        Sum filled = new Sum();
        Set<Id> free = new TreeSet<>(group.free());
        free.removeIf(type -> !formulation.obtainable(type));
        for (Id type : free) {
            int column = stand(type, group, filled);
            (group.exact().contains(type) ? asItself : asOthers).computeIfAbsent(type, id -> new Sum()).add(1, column);
        }
        for (Id type : formulation.converted(wants, group)) {
            stand(type, group, filled);
        }
        group.shared().forEach((line, types) -> {
            asked.merge(line, group.count(), Integer::sum);
            for (Id type : types) {
                if (formulation.obtainable(type)) {
                    int column = stand(type, group, filled);
                    asOthers.computeIfAbsent(type, id -> new Sum()).add(1, column);
                    byLine.computeIfAbsent(line, key -> new Sum()).add(1, column);
                }
            }
        });
        if (chosen == Formulation.NONE) {
            maker.atLeast(filled, group.count());
        } else {
            maker.atLeast(filled.add(-group.count(), chosen), 0);
        }
    }

    private int stand(Id type, NeedGroup group, Sum filled) {
        int column = maker.column(type + " stands in " + wants.target().id(), 0, 0, group.count(), 4);
        filled.add(1, column);
        uses.computeIfAbsent(type, id -> new Sum()).add(1, column);
        return column;
    }

    private void oneMeaning() {
        long all = groups.stream().mapToLong(NeedGroup::count).sum();
        asItself.forEach((type, itself) -> {
            Sum others = asOthers.get(type);
            if (others != null) {
                int means = maker.column(type + " stands for itself in " + wants.target().id(), 0, 0, 1, 2);
                maker.atLeast(new Sum().add(all, means).add(-1, itself), 0);
                maker.atMost(new Sum().add(1, others).add(all, means), all);
            }
        });
    }
}
