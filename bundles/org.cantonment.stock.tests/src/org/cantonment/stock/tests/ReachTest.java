package org.cantonment.stock.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.reach.FormationReach;
import org.cantonment.stock.reach.Near;
import org.cantonment.stock.reach.Places;
import org.cantonment.stock.reach.Reach;
import org.cantonment.stock.reach.Shape;
import org.cantonment.stock.turnout.Depot;
import org.junit.jupiter.api.Test;

/** How far a shelf is from formations, by hand and against all fillings. */
class ReachTest {

    private static FieldUnit unit(String name, Step... steps) {
        return new FieldUnit(Id.of("Book", name), List.of(), List.of(steps));
    }

    private static Step step(int strength, int points, String what) {
        return new Step(strength, points, List.of(new Requirement(Id.of("any"), strength, Things.ids(what))));
    }

    private static final FieldUnit STAFF = unit("Staff", step(1, 10, "Staff"));
    private static final FieldUnit TREADS = unit("Treads", step(3, 24, "Tread"), step(5, 40, "Tread"));
    private static final FieldUnit CRANKS = unit("Cranks", step(4, 20, "Crank"));
    private static final FieldUnit SCOUTS = unit("Scouts", step(2, 8, "Cart"));
    private static final Shape SQUADRON = new Shape(Id.of("Book/Squadron"), List.of(new Places(1, 1, List.of(STAFF)),
            new Places(2, 3, List.of(TREADS, CRANKS)), new Places(0, 1, List.of(SCOUTS))));

    private static Depot depot(String... things) {
        Things shelf = new Things().piece("Staff", null).piece("Tread", null).piece("Crank", null).piece("Cart", null);
        for (String thing : things) {
            shelf.has(thing);
        }
        return shelf.depot();
    }

    @Test
    void theBilletsAreFilledWithWhatIsThere() {
        FormationReach reach = Reach.of(depot("Staff", "3 Tread", "4 Crank"), List.of(SQUADRON), CancelToken.NEVER).get(0);
        assertEquals(0, reach.least().orElseThrow().lacking());
        assertEquals(List.of(new Fielded(STAFF.unit(), 1, 10, 1), new Fielded(CRANKS.unit(), 4, 20, 1),
                new Fielded(TREADS.unit(), 3, 24, 1)), sorted(reach.least().orElseThrow()));
        // At most: three in line and scouts. Treads of 5 lack 2, another troop of cranks 4, scouts 2.
        assertEquals(8, reach.most().orElseThrow().lacking());
        assertTrue(reach.most().orElseThrow().proven());
    }

    @Test
    void theNearestComesFirstAndWhatHasNoUnitLast() {
        Shape patrol = new Shape(Id.of("Book/Patrol"), List.of(new Places(1, 2, List.of(SCOUTS))));
        Shape ghost = new Shape(Id.of("Book/Ghost"), List.of(new Places(1, 1, List.of())));
        List<FormationReach> all = Reach.of(depot("Staff", "5 Crank", "2 Cart"), List.of(ghost, SQUADRON, patrol),
                CancelToken.NEVER);
        assertEquals(List.of("Patrol", "Squadron", "Ghost"), all.stream().map(one -> one.formation().name()).toList());
        assertEquals(3, all.get(1).least().orElseThrow().lacking());
        assertEquals(Optional.empty(), all.get(2).least());
        assertThrows(IllegalArgumentException.class, () -> new Places(2, 1, List.of()));
    }

    @Test
    void noFillingIsNearer() {
        Random random = new Random(17);
        int reached = 0;
        for (int i = 0; i < 120; i++) {
            Case of = new Case(random, false, 3);
            Depot depot = of.depot();
            List<FieldUnit> units = new ArrayList<>();
            for (Requirement need : of.asked()) {
                int strength = 1 + random.nextInt(3);
                units.add(new FieldUnit(need.entry(), List.of(), List.of(new Step(strength, 5,
                        List.of(new Requirement(need.entry(), strength, need.anyOf()))))));
            }
            Shape shape = new Shape(Id.of("Book/Shape"), List.of(new Places(random.nextInt(3), 2, units),
                    new Places(1, 2, units.subList(0, 1))));
            FormationReach reach = Reach.of(depot, List.of(shape), CancelToken.NEVER).get(0);
            assertEquals(least(depot, shape, 0, 0, new ArrayList<>()), reach.least().orElseThrow().lacking(), "case " + i);
            assertTrue(reach.least().orElseThrow().proven());
            reached += reach.least().orElseThrow().lacking() == 0 ? 1 : 0;
        }
        assertTrue(reached > 20 && reached < 110, "reached: " + reached);
    }

    private static int least(Depot depot, Shape shape, int place, int taken, List<Requirement> needs) {
        if (place == shape.places().size()) {
            return depot.turnout(needs, CancelToken.NEVER).lacking();
        }
        if (taken == shape.places().get(place).min()) {
            return least(depot, shape, place + 1, 0, needs);
        }
        int least = Integer.MAX_VALUE;
        for (FieldUnit unit : shape.places().get(place).of()) {
            List<Requirement> more = new ArrayList<>(needs);
            more.addAll(unit.steps().get(0).needs());
            least = Math.min(least, least(depot, shape, place, taken + 1, more));
        }
        return least;
    }

    private static List<Fielded> sorted(Near near) {
        List<Fielded> sorted = new ArrayList<>(near.units());
        sorted.sort((one, other) -> one.points() - other.points());
        return sorted;
    }
}
