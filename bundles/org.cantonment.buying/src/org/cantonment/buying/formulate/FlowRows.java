package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Collection;
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
import org.cantonment.stock.likeness.StandIn;

/** Columns for who stands where, for needs that overlap in many ways, keep to shares, or give each type one meaning. */
final class FlowRows {

    private final Formulation formulation;
    private final ProgrammeMaker maker;
    private final int number;
    private final Demands demands;
    private final Wants wants;
    private final List<NeedGroup> groups;
    private final int forOthers;
    private final Map<Id, Sum> uses = new TreeMap<>();
    private final Map<Id, Sum> asItself = new TreeMap<>();
    private final Map<Id, Sum> asOthers = new TreeMap<>();
    private final Map<Share, Sum> byShare = new LinkedHashMap<>();
    private final Map<Share, Sum> asked = new LinkedHashMap<>();
    private final Map<Share, Long> askedBesides = new LinkedHashMap<>();

    /** What may stand by one line has a share of its own wherever the same may. */
    private record Share(int line, Set<Id> types) {
    }

    /** @param chosen the column that says whether the target stands; {@link Formulation#NONE} if it must */
    FlowRows(Formulation formulation, ProgrammeMaker maker, int number, int chosen, Wants wants, List<NeedGroup> groups) {
        this(formulation, maker, number, new Demands(chosen), wants, groups, 0);
    }

    /** @param forOthers what a piece costs that does not stand for itself */
    FlowRows(Formulation formulation, ProgrammeMaker maker, int number, Demands demands, Wants wants,
            List<NeedGroup> groups, int forOthers) {
        this.forOthers = forOthers;
        this.formulation = formulation;
        this.maker = maker;
        this.number = number;
        this.demands = demands;
        this.wants = wants;
        this.groups = groups;
    }

    /** @throws org.cantonment.domain.common.Cancelled if the token says so */
    void add(CancelToken cancel) {
        for (List<NeedGroup> alike : together()) {
            cancel.check();
            fill(alike);
        }
        int stage = wants.target().stage();
        uses.forEach((type, used) -> {
            cancel.check();
            Formulation.Supplying supplying = formulation.supply(type, stage, number);
            maker.atLeast(new Sum().add(1, supplying.sum()).add(-1, used), -supplying.own());
        });
        byShare.forEach(this::keepTo);
        if (wants.target().allowance().oneTable()) {
            oneMeaning();
        }
    }

    /** So many in a hundred of what is asked for, rounded down: in whole numbers no rounding is needed. */
    private void keepTo(Share share, Sum standing) {
        StandIn line = wants.target().allowance().standIns().get(share.line());
        int percent = line.percent().orElseThrow();
        if (asked.get(share).isEmpty()) {
            maker.atMost(standing, askedBesides.get(share) * percent / 100);
        } else {
            maker.atLeast(new Sum().add(percent, asked.get(share)).add(-100, standing), -percent * askedBesides.get(share));
        }
    }

    /** What the very same may fill is filled together, unless it matters what each stands for. */
    private Collection<List<NeedGroup>> together() {
        if (wants.target().allowance().oneTable() || !demands.open()) {
            return groups.stream().map(List::of).toList();
        }
        Map<Object, List<NeedGroup>> alike = new LinkedHashMap<>();
        groups.forEach(group -> alike.computeIfAbsent(group.shared().isEmpty() ? List.of(there(group.free()),
                formulation.converted(wants, group)) : group, key -> new ArrayList<>()).add(group));
        return alike.values();
    }

    private Set<Id> there(Set<Id> types) {
        Set<Id> there = new TreeSet<>(types);
        there.removeIf(type -> !formulation.obtainable(type));
        return there;
    }

    private void fill(List<NeedGroup> alike) {
        NeedGroup group = alike.get(0);
        int most = alike.stream().mapToInt(NeedGroup::count).sum();
        Sum filled = new Sum();
        for (Id type : there(group.free())) {
            int column = stand(type, group.exact().contains(type) ? 0 : forOthers, most, filled);
            (group.exact().contains(type) ? asItself : asOthers).computeIfAbsent(type, id -> new Sum()).add(1, column);
        }
        formulation.workedOver(wants, group).forEach((given, type) ->
                asItself.computeIfAbsent(type, id -> new Sum()).add(1, stand(given, forOthers, most, filled)));
        group.shared().forEach((line, types) -> share(line, there(types), group, filled));
        demands.meet(alike, filled, maker);
    }

    private void share(int line, Set<Id> there, NeedGroup group, Sum filled) {
        Share share = new Share(line, there);
        askedBesides.merge(share, demands.ask(group, asked.computeIfAbsent(share, key -> new Sum())), Long::sum);
        for (Id type : there) {
            int column = stand(type, forOthers, group.count(), filled);
            asOthers.computeIfAbsent(type, id -> new Sum()).add(1, column);
            byShare.computeIfAbsent(share, key -> new Sum()).add(1, column);
        }
    }

    private int stand(Id type, int cost, int most, Sum filled) {
        int column = maker.column(type + " stands in " + wants.target().id(), cost, 0, most, 4);
        filled.add(1, column);
        uses.computeIfAbsent(type, id -> new Sum()).add(1, column);
        return column;
    }

    private void oneMeaning() {
        asItself.forEach((type, itself) -> {
            Sum others = asOthers.get(type);
            if (others != null) {
                int means = maker.column(type + " stands for itself in " + wants.target().id(), 0, 0, 1, 2);
                maker.atLeast(new Sum().add(most(type, true), means).add(-1, itself), 0);
                maker.atMost(new Sum().add(1, others).add(most(type, false), means), most(type, false));
            }
        });
    }

    /** More of a type never stand for itself, or for others. */
    private long most(Id type, boolean itself) {
        return groups.stream().filter(group -> itself == group.exact().contains(type)).mapToLong(NeedGroup::count).sum();
    }
}
