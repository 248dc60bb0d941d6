package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.EUR;
import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.target;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** Three rounds of a growing army, solved by hand. */
class GrowthTest {

    private static final Shop SHOP = new Shop().pieces("Foot", "Crank", "Gun").part("Frame", "1 Crank", "1 Gun")
            .box("Marsh-Box", "10 Foot", "10.00").box("Car-Box", "2 Frame", "12.00")
            .box("Starter", "10 Foot, 1 Frame", "17.00");

    private static Growth grow(boolean saved, String... budgets) {
        List<Stage> stages = Arrays.stream(budgets).map(one -> Stage.OPEN.with(eur(one))).toList();
        return Grower.grow(new Question(SHOP.market(), Supply.NONE, List.of(target("R1", 0, "10 Foot, 1 Crank"),
                target("R2", 1, "10 Foot, 1 Crank, 1 Gun"), target("R3", 2, "20 Foot, 1 Crank, 1 Gun")), stages, saved,
                Map.of()), EUR, CancelToken.NEVER, Progress.SILENT);
    }

    private static String text(Plan plan) {
        return plan.purchases().stream().map(one -> (one.stage() + 1) + ": " + one.count() + " " + one.ware().box().name())
                .collect(Collectors.joining(", "));
    }

    private static String builds(Plan plan) {
        return plan.buildings().stream().map(one -> one.count() + " " + one.gives().keySet().iterator().next().name())
                .collect(Collectors.joining(", "));
    }

    @Test
    void looksAheadOfTheCheapestFirstStep() {
        Growth growth = grow(false, "25.00", "10.00", "15.00");
        Plan plan = growth.answer().plan().orElseThrow();
        assertEquals("1: 1 Car-Box, 1: 1 Marsh-Box, 3: 1 Marsh-Box", text(plan));
        assertEquals(eur("32.00"), plan.total());
        assertTrue(plan.leftovers().isEmpty());
        assertEquals("1 Crank, 1 Gun", builds(plan));
        assertEquals(Optional.of(eur("34.00")), growth.stepwise());
        assertEquals(Optional.empty(), growth.advice());
    }

    @Test
    void savesUpForTheNextRound() {
        Growth growth = grow(true, "20.00", "10.00", "15.00");
        Plan plan = growth.answer().plan().orElseThrow();
        assertEquals("1: 1 Starter, 2: 1 Car-Box, 3: 1 Marsh-Box", text(plan));
        assertEquals(eur("39.00"), plan.total());
        assertEquals("1 Frame", Shop.left(plan));
        assertEquals(eur("13.00"), growth.accounts().get(1).available().orElseThrow());
        assertEquals(eur("6.00"), growth.accounts().get(2).inHand().orElseThrow());
        Growth.Advice advice = growth.advice().orElseThrow();
        assertEquals(eur("2.00"), advice.more());
        assertEquals(eur("7.00"), advice.saves());
        assertEquals(eur("32.00"), grow(true, "25.00", "10.00", "15.00").answer().plan().orElseThrow().total());
    }

    @Test
    void saysTheFirstRoundThatIsShort() {
        Growth growth = grow(false, "20.00", "10.00", "15.00");
        assertTrue(growth.answer().impossible());
        Growth.Shortfall shortfall = growth.shortfall().orElseThrow();
        assertEquals(1, shortfall.stage());
        assertEquals(eur("2.00"), shortfall.missing());
        assertEquals(eur("12.00"), shortfall.needed());
        assertEquals(eur("10.00"), shortfall.available());
    }

    /** All budgets together are 4.00 too little; but what is not saved up is no help, and the car box costs 12.00 in round 2. */
    @Test
    void whatIsNotSavedUpIsNoHelp() {
        Growth.Shortfall shortfall = grow(false, "17.00", "1.00", "100.00").shortfall().orElseThrow();
        assertTrue(shortfall.settled());
        assertEquals(1, shortfall.stage());
        assertEquals(eur("11.00"), shortfall.missing());
        assertEquals(eur("12.00"), shortfall.needed());
        assertEquals(eur("1.00"), shortfall.available());
    }

    @Test
    void aBudgetOfNothingIsShortAtOnce() {
        Growth.Shortfall shortfall = grow(true, "0.00", "0.00", "100.00").shortfall().orElseThrow();
        assertEquals(0, shortfall.stage());
        assertEquals(eur("17.00"), shortfall.missing());
    }

    /** What takes ten days is no help for a round in five. */
    @Test
    void whatComesTooLateIsNoHelp() {
        LocalDate day = Shop.DAY;
        Shop shop = new Shop().pieces("Foot").box("Platoon", "12 Foot", "18.00").seller("Slow", "", "", "", 10,
                Shop.offer("S", -1, "Platoon", eur("12.00")));
        List<Stage> stages = List.of(new Stage(Optional.of(day), Optional.of(day.plusDays(5)), Optional.empty()),
                new Stage(Optional.of(day.plusDays(6)), Optional.of(day.plusDays(12)), Optional.empty()));
        Question question = new Question(shop.market(), Supply.NONE, List.of(target("R1", 0, "12 Foot"),
                target("R2", 1, "24 Foot")), stages, false, Map.of());
        Plan plan = Shop.ask(question).plan().orElseThrow();
        assertEquals("1: 1 Platoon, 1: 1 Platoon", text(plan));
        assertEquals(eur("30.00"), plan.total());
    }

    /** Six frames for the second round, of which it can build three: three are built, and so two pairs bought, in the first. */
    @Test
    void hoursAtTheBenchMayAskToBuySooner() {
        Shop shop = new Shop().pieces("Crank", "Gun").part("Frame", "1 Crank", "1 Gun").box("Pair", "2 Frame", "12.00");
        List<Target> targets = List.of(target("R1", 0, "1 Crank"), target("R2", 1, "6 Crank"));
        Plan free = Shop.ask(new Question(shop.market(), Supply.NONE, targets, List.of(Stage.OPEN, Stage.OPEN), false,
                Map.of())).plan().orElseThrow();
        assertEquals("1: 1 Pair, 2: 2 Pair", text(free));
        Plan busy = Shop.ask(new Question(shop.market(), Supply.NONE, targets,
                List.of(Stage.OPEN.building(4), Stage.OPEN.building(3)), false, Map.of())).plan().orElseThrow();
        assertEquals("1: 2 Pair, 2: 1 Pair", text(busy));
        assertTrue(Shop.ask(new Question(shop.market(), Supply.NONE, targets,
                List.of(Stage.OPEN.building(2), Stage.OPEN.building(3)), false, Map.of())).impossible());
    }
}
