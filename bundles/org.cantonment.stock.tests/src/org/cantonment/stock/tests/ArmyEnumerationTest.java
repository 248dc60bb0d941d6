package org.cantonment.stock.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.Army;
import org.cantonment.stock.eras.EraUnits;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.ShelfEras;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.turnout.Depot;
import org.junit.jupiter.api.Test;

/** Greatest armies against all there are, on small shelves drawn from a fixed seed. */
class ArmyEnumerationTest {

    private static final int CASES = 150;
    private static final int MOST = 6;

    @Test
    void noArmyHasMorePoints() {
        Random random = new Random(88);
        int great = 0;
        for (int i = 0; i < CASES; i++) {
            Case of = new Case(random, random.nextBoolean(), 3);
            Depot depot = of.depot();
            List<FieldUnit> units = units(of, random);
            Army army = ShelfEras.of(of.catalogue(), depot.supply(),
                    List.of(new EraUnits(Id.of("Book/Era"), depot.allowance(), units)), Optional.empty(), CancelToken.NEVER,
                    Progress.SILENT).eras().get(0).army();
            assertEquals(greatest(depot, units, 0, List.of(), 0), army.points(), "case " + i + ": " + of + units);
            assertTrue(army.proven(), "case " + i + ": " + of + units);
            assertEquals(army.points(), army.units().stream().mapToInt(one -> one.count() * one.points()).sum());
            great += army.units().stream().mapToInt(Fielded::count).sum() > 1 ? 1 : 0;
        }
        assertTrue(great > CASES / 5, "armies of more than one unit: " + great);
    }

    private static List<FieldUnit> units(Case of, Random random) {
        List<FieldUnit> units = new ArrayList<>();
        for (Requirement need : of.asked()) {
            int least = 1 + random.nextInt(3);
            List<Step> steps = new ArrayList<>();
            for (int strength : new int[] {least, least + 1 + random.nextInt(2)}) {
                List<Requirement> needs = new ArrayList<>();
                needs.add(new Requirement(need.entry(), strength, need.anyOf()));
                if (random.nextInt(3) == 0) {
                    needs.add(Things.need("X", 1, "T" + random.nextInt(of.types)));
                }
                steps.add(new Step(strength, 1 + random.nextInt(9), needs));
            }
            units.add(new FieldUnit(need.entry(), List.of(), steps));
        }
        return units;
    }

    /** So many of each unit at each strength as there is enough for, one after another. */
    private static int greatest(Depot depot, List<FieldUnit> units, int at, List<Requirement> needs, int points) {
        if (at == units.size() * 2) {
            return points;
        }
        Step step = units.get(at / 2).steps().get(at % 2);
        int greatest = 0;
        List<Requirement> more = new ArrayList<>(needs);
        for (int copies = 0; copies <= MOST * 4; copies++) {
            if (copies > 0) {
                more.addAll(step.needs());
            }
            if (!depot.turnout(more, CancelToken.NEVER).complete()) {
                break;
            }
            greatest = Math.max(greatest, greatest(depot, units, at + 1, more, points + copies * step.points()));
        }
        return greatest;
    }
}
