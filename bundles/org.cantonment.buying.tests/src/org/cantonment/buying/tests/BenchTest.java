package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.target;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Bench;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.plan.Work;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.shelf.BenchTime;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;
import org.junit.jupiter.api.Test;

/** Hours at the bench, solved by hand. */
class BenchTest {

    /** Each frame takes an hour and a half, whatever becomes of it. */
    private static final Shop FRAMES = new Shop().pieces("Crank", "Gun").timed("Frame", Fixing.GLUED, 90, "1 Crank", "1 Gun")
            .box("Single", "1 Frame", "7.00");

    private static Stage minutes(int most) {
        return Stage.OPEN.with(new Bench(Measure.MINUTES, most));
    }

    private static Answer ask(Shop shop, Supply shelf, List<Target> targets, Stage... stages) {
        return Shop.ask(new Question(shop.market(), shelf, targets, List.of(stages), false, Map.of()));
    }

    private static String bought(Plan plan) {
        return plan.purchases().stream().map(one -> (one.stage() + 1) + ": " + one.count()).collect(Collectors.joining(", "));
    }

    private static List<Long> worked(Plan plan) {
        return plan.work().stream().map(Work::minutes).toList();
    }

    private static List<String> why(Answer answer) {
        assertTrue(answer.impossible());
        return answer.findings().stream().map(one -> one.code() + ": " + one.message()).toList();
    }

    private static final List<Target> ONE_THEN_THREE = List.of(target("R1", 0, "1 Crank"), target("R2", 1, "1 Crank, 2 Gun"));

    /** Round 2 has time for one frame (2 of 3 hours would be two). So one of its two is bought and built a round earlier. */
    @Test
    void whatThereIsNoTimeForIsBuiltARoundEarlier() {
        assertEquals("1: 1, 2: 2", bought(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, minutes(180), minutes(180)).plan().orElseThrow()));
        Plan plan = ask(FRAMES, Supply.NONE, ONE_THEN_THREE, minutes(180), minutes(179)).plan().orElseThrow();
        assertEquals("1: 2, 2: 1", bought(plan));
        assertEquals(List.of(180L, 90L), worked(plan));
        assertEquals(new Work(270, 3, Map.of()), plan.allWork());
    }

    /** Three frames are 4 hours 30 minutes. */
    @Test
    void theShortageIsNamedInMinutes() {
        assertEquals(List.of("buying.bench: R2 is 10 minutes short at the bench; it has 1 hour 20 minutes, beside what is left"
                + " of the rounds before."), why(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, minutes(180), minutes(80))));
        assertEquals(List.of("buying.bench: R1 is 1 hour 30 minutes short at the bench; it has 0 minutes."),
                why(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, minutes(0), minutes(1_000))));
        assertEquals(List.of("buying.bench: R2 is 1 part short at the bench; it has 1 part, beside what is left of the rounds"
                + " before."), why(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, Stage.OPEN.building(1), Stage.OPEN.building(1))));
    }

    /** 21.00 are needed; with 20.00 and no time either, nobody can be content with one more of the one. */
    @Test
    void moneyAndTimeMayLackTogether() {
        Stage poor = minutes(80).with(Shop.eur("10.00"));
        assertEquals(List.of("buying.bench: There is too little money, and too little time at the bench: more of the one alone"
                + " would not do."), why(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, poor, poor)));
        Stage rich = minutes(80).with(Shop.eur("50.00"));
        assertEquals(List.of("buying.bench: R1 is 10 minutes short at the bench; it has 1 hour 20 minutes."),
                why(ask(FRAMES, Supply.NONE, ONE_THEN_THREE, rich, rich)));
        // A third frame is bought, and built, in time if there is more money in the first round, or more time in the second.
        assertEquals(List.of("buying.budget", "buying.bench"), ask(FRAMES, Supply.NONE, ONE_THEN_THREE,
                minutes(180).with(Shop.eur("7.00")), minutes(90).with(Shop.eur("14.00"))).findings().stream()
                        .map(one -> one.code()).toList());
        Stage idle = minutes(800).with(Shop.eur("10.00"));
        assertEquals(List.of("buying.budget"), ask(FRAMES, Supply.NONE, ONE_THEN_THREE, idle, idle).findings().stream()
                .map(one -> one.code()).toList());
    }

    /** Two carriers at 40 minutes each are as good as one handful of two at 90, and sooner built. */
    @Test
    void aWayOfItsOwnTime() {
        Shop shop = new Shop().pieces("Carrier", "Spotter").timed("Frame", Fixing.GLUED, 90, "2 Carrier, 1 Spotter", "1 Carrier in 40")
                .box("Single", "1 Frame", "7.00");
        List<Target> targets = List.of(target("R1", "2 Carrier"));
        Plan slow = ask(shop, Supply.NONE, targets, minutes(90)).plan().orElseThrow();
        assertEquals("1: 1", bought(slow));
        Plan quick = ask(shop, Supply.NONE, targets, minutes(89)).plan().orElseThrow();
        assertEquals("1: 2", bought(quick));
        assertEquals(List.of(80L), worked(quick));
    }

    @Test
    void nothingIsBuiltThatStandsNowhere() {
        Supply shelf = frames(5, -1, Fixing.GLUED);
        Plan plan = ask(FRAMES, shelf, List.of(target("R1", 0, "1 Crank"), target("R2", 1, "1 Crank, 1 Gun")), minutes(900), minutes(900))
                .plan().orElseThrow();
        assertEquals(180, plan.allWork().minutes());
        Plan free = ask(FRAMES, shelf, List.of(target("R1", 0, "1 Crank"), target("R2", 1, "1 Crank, 1 Gun")), Stage.OPEN, Stage.OPEN)
                .plan().orElseThrow();
        assertEquals(180, free.allWork().minutes());
    }

    private static Supply frames(int count, int built, Fixing fixing) {
        List<Way> ways = List.of(new Way(Shop.id("Frame").line(1), Map.of(Shop.id("Crank"), 1)),
                new Way(Shop.id("Frame").line(2), Map.of(Shop.id("Gun"), 1)));
        return new Supply(List.of(), List.of(new Frames(Shop.id("Frame"), count, false, ways, built, fixing)), List.of(), List.of());
    }

    private static Shop loose(Fixing fixing) {
        return new Shop().pieces("Crank", "Gun").timed("Frame", fixing, 90, "1 Crank", "1 Gun in 120").box("Single", "1 Frame", "7.00");
    }

    /** What comes loose at the bench takes its time whenever it becomes something else, and none while it stays what it is. */
    @Test
    void rebuiltAtTheBench() {
        List<Target> targets = List.of(target("R1", 0, "1 Crank"), target("R2", 1, "1 Crank"), target("R3", 2, "1 Gun"));
        Shop shop = loose(Fixing.LOOSE_AT_BENCH);
        Plan plan = ask(shop, Supply.NONE, targets, minutes(90), minutes(0), minutes(120)).plan().orElseThrow();
        assertEquals(List.of(90L, 0L, 120L), worked(plan));
        assertEquals("1: 1", bought(plan));
        assertTrue(ask(shop, Supply.NONE, targets, minutes(90), minutes(0), minutes(119)).impossible());
        Plan ready = ask(shop, frames(1, 0, Fixing.LOOSE_AT_BENCH), targets, minutes(0), minutes(0), minutes(120)).plan().orElseThrow();
        assertEquals(List.of(0L, 0L, 120L), worked(ready));
    }

    /** What comes loose between games takes its time once, as long as its longest way, and may then be anything. */
    @Test
    void builtOnceForAllGames() {
        List<Target> targets = List.of(target("R1", 0, "1 Crank"), target("R2", 1, "1 Gun"), target("R3", 2, "1 Crank, 1 Gun"));
        Shop shop = loose(Fixing.LOOSE_BETWEEN_GAMES);
        Plan plan = ask(shop, Supply.NONE, targets, minutes(120), minutes(0), minutes(120)).plan().orElseThrow();
        assertEquals(List.of(120L, 0L, 120L), worked(plan));
        assertTrue(ask(shop, Supply.NONE, targets, minutes(119), minutes(0), minutes(240)).impossible());
        Plan earlier = ask(shop, Supply.NONE, targets, minutes(120), minutes(120), minutes(0)).plan().orElseThrow();
        assertEquals(List.of(120L, 120L, 0L), worked(earlier));
        assertEquals("1: 1, 2: 1", bought(earlier));
        Plan ready = ask(shop, frames(2, 1, Fixing.LOOSE_BETWEEN_GAMES), targets, minutes(0), minutes(0), minutes(0)).plan().orElseThrow();
        assertEquals(List.of(0L, 0L, 0L), worked(ready));
        assertEquals("", bought(ready));
    }

    /** It counts as no time, and the answer can say so. */
    @Test
    void aPartThatDoesNotSayHowLongItTakes() {
        Shop shop = new Shop().pieces("Crank", "Gun").timed("Frame", Fixing.GLUED, -1, "1 Crank in 30", "1 Gun").box("Single",
                "1 Frame", "7.00");
        Plan plan = ask(shop, Supply.NONE, List.of(target("R1", "1 Crank, 2 Gun")), minutes(30)).plan().orElseThrow();
        assertEquals(List.of(new Work(30, 3, Map.of(Shop.id("Frame"), 2))), plan.work());
    }

    /** The same figures where nobody asks for hours: parts that leave no choice are counted, too. */
    @Test
    void workIsToldWithoutAnEndOfIt() {
        Shop shop = new Shop().pieces("Crank", "Gun", "Flag").timed("Frame", Fixing.GLUED, 90, "1 Crank", "1 Gun")
                .timed("Pole", Fixing.GLUED, 15, "1 Flag").box("Single", "1 Frame, 2 Pole", "7.00");
        Plan plan = ask(shop, Supply.NONE, List.of(target("R1", "1 Crank, 1 Gun, 3 Flag")), Stage.OPEN).plan().orElseThrow();
        assertEquals(List.of(new Work(225, 5, Map.of())), plan.work());
    }

    /** A gun takes two hours, a crank an hour and a half; where there is no time for the gun, a second crank stands for it. */
    @Test
    void theTruestThatThereIsTimeFor() {
        for (Fixing fixing : List.of(Fixing.GLUED, Fixing.LOOSE_AT_BENCH)) {
            Shop shop = new Shop().family("Cars", "Crank", "Gun").timed("Frame", fixing, 90, "1 Crank", "1 Gun in 120")
                    .box("Single", "1 Frame", "7.00");
            Target both = new Target(Shop.id("R1"), "R1", 0, Shop.needs("1 Crank, 1 Gun"), shop.allowance(new Allows(
                    Shop.id("Card").line(1), Level.KINDRED, Validity.ALWAYS)));
            Plan unhurried = ask(shop, Supply.NONE, List.of(both), minutes(1_000)).plan().orElseThrow();
            assertEquals(2, unhurried.turnouts().get(0).standing(Truth.EXACT), fixing + "");
            assertEquals(List.of(210L), worked(unhurried), fixing + "");
            Plan hurried = ask(shop, Supply.NONE, List.of(both), minutes(209)).plan().orElseThrow();
            assertEquals(1, hurried.turnouts().get(0).standing(Truth.EXACT), fixing + "");
            assertEquals(List.of(180L), worked(hurried), fixing + "");
        }
    }

    /** What is looked for to stand truest is no reason to build more than stands. */
    @Test
    void noMoreIsMadeReadyThanStands() {
        Shop shop = new Shop().family("Cars", "Crank", "Gun").timed("Frame", Fixing.LOOSE_BETWEEN_GAMES, 90, "1 Crank", "1 Gun")
                .timed("Hull", Fixing.GLUED, 30, "1 Gun", "1 Crank").box("Single", "1 Frame, 1 Hull", "7.00");
        Target both = new Target(Shop.id("R1"), "R1", 0, Shop.needs("1 Crank, 1 Gun"), shop.allowance(new Allows(
                Shop.id("Card").line(1), Level.KINDRED, Validity.ALWAYS)));
        Plan plan = ask(shop, frames(5, -1, Fixing.LOOSE_BETWEEN_GAMES), List.of(both), minutes(1_000)).plan().orElseThrow();
        assertEquals(2, plan.turnouts().get(0).standing(Truth.EXACT));
        assertEquals(List.of(180L), worked(plan));
    }

    /** Of forty lists to choose from all but one want frames, which are cheap and take their time. */
    @Test
    void amongManyListsOneIsFoundThatThereIsTimeFor() {
        Shop shop = new Shop().pieces("Crank", "Tower").timed("Frame", Fixing.GLUED, 90, "1 Crank").box("Single", "1 Frame", "7.00")
                .box("Landmark", "1 Tower", "50.00");
        List<Target> targets = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            targets.add(target("L" + i, i == 17 ? "1 Tower" : 1 + i % 4 + " Crank").oneOf(new Target.Choice(Shop.id("Round"), 40 - i,
                    Optional.empty())));
        }
        Question question = new Question(shop.market(), Supply.NONE, targets, List.of(minutes(89)), false, Map.of());
        Plan plan = Grower.grow(question, Shop.EUR, CancelToken.NEVER, Progress.SILENT).answer().plan().orElseThrow();
        assertEquals("L17", plan.fielded().get(0).id().name());
        assertEquals(0, plan.allWork().minutes());
    }

    @Test
    void hoursPerWeekAreRoundedDown() {
        BenchTime three = new BenchTime(180, Measure.MINUTES, true);
        // 180 minutes times 10 days divided by 7: 257 and a seventh.
        assertEquals(257, three.in(10));
        assertEquals(180, three.in(7));
        assertEquals(0, three.in(-2));
        assertEquals(2, new BenchTime(3, Measure.PARTS, true).in(6));
    }
}
