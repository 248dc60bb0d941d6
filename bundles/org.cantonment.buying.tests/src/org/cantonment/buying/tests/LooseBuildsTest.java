package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.left;
import static org.cantonment.buying.tests.Shop.needs;
import static org.cantonment.buying.tests.Shop.target;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.cantonment.buying.plan.Building;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Level;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** Parts that come loose: what is built of them for a list, and what of them is left over. */
class LooseBuildsTest {

    private static Shop cars(Fixing fixing) {
        return new Shop().family("Wheeled", "Crank", "Gun").part("Frame", fixing, "1 Crank", "1 Gun");
    }

    private static String built(List<Building> buildings) {
        return buildings.stream().map(one -> one.count() + " " + one.gives().keySet().iterator().next().name())
                .collect(Collectors.joining(", "));
    }

    private static Plan plan(Shop shop, String... needs) {
        List<Target> targets = IntStream.range(0, needs.length).mapToObj(at -> Target.now(id("List-" + at),
                "List " + at, needs(needs[at]), shop.allowance(new Allows(Id.of("Book/Card").line(1), Level.KINDRED,
                        Validity.ALWAYS)))).toList();
        return Shop.ask(Question.of(shop.market(), Supply.NONE, targets)).plan().orElseThrow();
    }

    /** Four frames in two boxes; the greater list uses three of them, so one is left over, whatever the lists make of them. */
    @Test
    void whatAListUsesIsNotLeftOver() {
        Shop shop = cars(Fixing.LOOSE_BETWEEN_GAMES).box("Cars", "2 Frame", "12.00");
        Plan plan = shop.plan(Supply.NONE, target("One", "2 Crank"), target("Other", "1 Gun, 2 Crank"));
        assertEquals(eur("24.00"), plan.total());
        assertEquals("1 Frame", left(plan));
        assertEquals(List.of("2 Crank", "2 Crank, 1 Gun"), plan.alone().stream().map(LooseBuildsTest::built).toList());
        assertEquals(List.of(), plan.buildings());
    }

    /** Built anew at the bench for each stage: what two stages use one after the other is in use once. */
    @Test
    void whatIsBuiltAnewIsInUseOnce() {
        Shop shop = cars(Fixing.LOOSE_AT_BENCH).box("Cars", "4 Frame", "12.00");
        Plan plan = Shop.ask(new Question(shop.market(), List.of(Supply.NONE), List.of(target("One", 0, "2 Crank, 1 Gun"),
                target("Other", 1, "2 Gun")), List.of(Stage.OPEN, Stage.OPEN), false, Map.of())).plan().orElseThrow();
        assertEquals("2 Crank, 1 Gun, 2 Gun", built(plan.buildings()));
        assertEquals("1 Frame", left(plan));
    }

    /** Kindred would do, but nothing keeps the frames from being what the list asks for. */
    @Test
    void ofWhatComesLooseTheTruestIsBuilt() {
        Plan plan = plan(cars(Fixing.LOOSE_BETWEEN_GAMES).box("Cars", "4 Frame", "12.00"), "4 Crank", "3 Gun, 1 Crank");
        assertEquals(List.of("4 Crank", "1 Crank, 3 Gun"), plan.alone().stream().map(LooseBuildsTest::built).toList());
        assertEquals(List.of(4, 4), plan.turnouts().stream().map(one -> one.standing(Truth.EXACT)).toList());
    }

    /** At most one gun in the box: the other three that are asked for stand as kindred. */
    @Test
    void aCapOverTheBoxHoldsForWhatIsBuiltOfIt() {
        Shop shop = cars(Fixing.LOOSE_BETWEEN_GAMES).box("Cars", "4 Frame", "12.00", -1, List.of(Shop.cap(1, "Gun")), false);
        Plan plan = plan(shop, "4 Gun");
        assertEquals(List.of("3 Crank, 1 Gun"), plan.alone().stream().map(LooseBuildsTest::built).toList());
        assertEquals(1, plan.turnouts().get(0).standing(Truth.EXACT));
        assertEquals(3, plan.turnouts().get(0).standing(Truth.KINDRED));
    }
}
