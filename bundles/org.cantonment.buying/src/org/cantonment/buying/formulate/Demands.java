package org.cantonment.buying.formulate;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.force.Requirement;

/** How many of each group of needs must stand: so many, none if the target is not chosen, or what the units chosen need. */
final class Demands {

    /** What a group asks for, as columns and besides, and what may be missing of it. */
    private record Open(Sum asked, long besides, int missing) {
    }

    private final int chosen;
    private final Map<NeedGroup, Open> open = new IdentityHashMap<>();

    /** @param chosen the column that says whether the target stands; {@link Formulation#NONE} if it must */
    Demands(int chosen) {
        this.chosen = chosen;
    }

    /** What is still open. */
    Demands(Sought sought, Wants wants, ProgrammeMaker maker) {
        this(Formulation.NONE);
        wants.groups().forEach(group -> open.put(group, new Open(new Sum(), 0, Formulation.NONE)));
        sought.units().forEach(unit -> unit.needs().forEach(need -> ask(unit, need, wants)));
        if (sought.missing() > 0) {
            wants.groups().forEach(group -> open.compute(group, (key, asked) ->
                    missing(group, asked, sought.missing(), maker)));
        }
    }

    private void ask(Sought.Open unit, Requirement need, Wants wants) {
        wants.group(need).ifPresent(group -> {
            Open asked = open.get(group);
            asked.asked().add(need.count(), unit.times());
            open.put(group, new Open(asked.asked(), asked.besides() + need.count() * unit.besides(), Formulation.NONE));
        });
    }

    private static Open missing(NeedGroup group, Open asked, long cost, ProgrammeMaker maker) {
        int column = maker.column("missing", cost, 0, group.count(), 3);
        maker.atLeast(new Sum().add(1, asked.asked()).add(-1, column), -asked.besides());
        return new Open(asked.asked(), asked.besides(), column);
    }

    /** Whether it is still open what is asked for. */
    boolean open() {
        return !open.isEmpty();
    }

    /** What stands in some groups together is as much as must stand there. */
    void meet(List<NeedGroup> groups, Sum standing, ProgrammeMaker maker) {
        long besides = 0;
        for (NeedGroup group : groups) {
            Open asked = open.get(group);
            if (asked != null) {
                standing.add(-1, asked.asked());
                besides += asked.besides();
                if (asked.missing() != Formulation.NONE) {
                    standing.add(1, asked.missing());
                }
            } else if (chosen == Formulation.NONE) {
                besides += group.count();
            } else {
                standing.add(-group.count(), chosen);
            }
        }
        maker.atLeast(standing, besides);
    }

    /** Adds what a group asks for, missing or not; gives what it asks for besides. */
    long ask(NeedGroup group, Sum into) {
        Open asked = open.get(group);
        if (asked == null) {
            return group.count();
        }
        into.add(1, asked.asked());
        return asked.besides();
    }

    /** How many are missing in a group. */
    long missing(NeedGroup group, long[] values) {
        int column = open.get(group).missing();
        return column == Formulation.NONE ? 0 : values[column];
    }
}
