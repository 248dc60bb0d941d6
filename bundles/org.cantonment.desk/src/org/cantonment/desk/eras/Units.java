package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Step;

/** The units of a ruling as a shelf sees them. */
public final class Units {
    private static final Id NOBODY = Id.of("Nobody");
    /** Of a unit that comes at more strengths only the ends of each line are asked about. */
    private static final int MOST_STRENGTHS = 12;

    private Units() {
    }

    /** Every unit that may be taken now, in the order of the books. */
    public static List<FieldUnit> of(Ruling ruling) {
        List<FieldUnit> units = new ArrayList<>();
        for (UnitView unit : ruling.units()) {
            if (unit.permission().allowed()) {
                List<Step> steps = new ArrayList<>();
                strengths(unit).forEach(strength -> steps.add(step(ruling, unit, strength)));
                units.add(new FieldUnit(unit.id(), unit.sides().stream().sorted().toList(), steps));
            }
        }
        return units;
    }

    private static TreeSet<Integer> strengths(UnitView unit) {
        TreeSet<Integer> all = new TreeSet<>();
        unit.steps().forEach(step -> {
            all.add(step.from());
            all.add(step.to());
            for (int strength = step.from(); strength <= step.to() && step.to() - step.from() < MOST_STRENGTHS; strength++) {
                all.add(strength);
            }
        });
        return all;
    }

    private static Step step(Ruling ruling, UnitView unit, int strength) {
        Entry entry = new Entry(NOBODY.line(1), Optional.empty(), 1, unit.id(), OptionalInt.of(strength), List.of(),
                Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
        ForceList list = new ForceList(NOBODY, Optional.empty(), OptionalInt.empty(), List.of(), Optional.empty(),
                OptionalInt.empty(), new Body(List.of(entry), List.of()), List.of(), List.of(), List.of(), List.of());
        return new Step(strength, (int) Math.max(0, Math.min(Integer.MAX_VALUE, unit.points(strength))),
                Requirements.of(ruling, list, Map.of()));
    }
}
