package org.cantonment.buying.formulate;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.force.Requirement;

/** How many of each group of needs must stand: so many, none if its target is not chosen, or what the units chosen need. */
final class Demands {

    /** What a group asks for as columns, and what may be missing of it. */
    private record Open(Sum asked, long besides, int missing) {
    }

    private final Choices choices;
    private final Optional<Sought> sought;
    private final Map<NeedGroup, Open> open = new IdentityHashMap<>();

    /** @param sought what the first target is; empty where all targets are settled */
    Demands(Choices choices, Optional<Sought> sought, List<Wants> wants, ProgrammeMaker maker) {
        this.choices = choices;
        this.sought = sought;
        sought.ifPresent(one -> one.units().forEach(unit -> ask(unit, wants.get(0))));
        sought.filter(one -> one.missing() > 0).ifPresent(one -> wants.get(0).groups().forEach(group ->
                open.computeIfPresent(group, (key, asked) -> missing(group, asked, one.missing(), maker))));
    }

    private void ask(Sought.Open unit, Wants wants) {
        for (Requirement need : unit.needs()) {
            wants.group(need).ifPresent(group -> {
                Open asked = open.computeIfAbsent(group, key -> new Open(new Sum(), 0, Formulation.NONE));
                asked.asked().add(need.count(), unit.times());
                open.put(group, new Open(asked.asked(), asked.besides() + need.count() * unit.besides(), Formulation.NONE));
            });
        }
    }

    private static Open missing(NeedGroup group, Open asked, long cost, ProgrammeMaker maker) {
        int column = maker.column("missing", cost, 0, group.count(), 3);
        maker.atLeast(new Sum().add(1, asked.asked()).add(-1, column), -asked.besides());
        return new Open(asked.asked(), asked.besides(), column);
    }

    /** Whether just as many must stand as the groups of a target say. */
    boolean settled(int target) {
        return sought.isEmpty() && choices.column(target) == Formulation.NONE;
    }

    /** Adds a factor times what must stand of a group where that is not settled; gives what must stand besides. */
    long add(long factor, int target, NeedGroup group, Sum into) {
        if (sought.isEmpty()) {
            into.add(factor * group.count(), choices.column(target));
            return 0;
        }
        Open asked = open.get(group);
        into.add(factor, asked.asked());
        if (asked.missing() != Formulation.NONE) {
            into.add(-factor, asked.missing());
        }
        return factor * asked.besides();
    }

    /** Adds a factor times what a group asks for, missing or not; gives what it asks for besides. */
    long ask(long factor, NeedGroup group, Sum into) {
        if (sought.isEmpty()) {
            return factor * group.count();
        }
        into.add(factor, open.get(group).asked());
        return factor * open.get(group).besides();
    }

    /** How many are missing of what a need of the first target asks for, together with all that the same may fill. */
    long missing(NeedGroup group, long[] values) {
        Open asked = open.get(group);
        return asked == null || asked.missing() == Formulation.NONE ? 0 : values[asked.missing()];
    }
}
