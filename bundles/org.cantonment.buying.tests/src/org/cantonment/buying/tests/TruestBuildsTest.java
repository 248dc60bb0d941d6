package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.needs;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** Of builds that cost the same, those with which the most pieces stand for themselves. */
class TruestBuildsTest {

    private static final String[] TYPES = {"Crank", "Gun", "Pike"};
    /** What each way of building gives of each type. */
    private static final int[][] WAYS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 2}};

    private static Shop cars(int frames) {
        return new Shop().family("Wheeled", TYPES).part("Frame", Fixing.GLUED, "1 Crank", "1 Gun", "2 Pike")
                .box("Frames", frames + " Frame", "12.00").box("Ready", "1 Crank", "9.00");
    }

    private static Plan plan(Shop shop, List<String> lists) {
        List<Target> targets = IntStream.range(0, lists.size()).mapToObj(at -> Target.now(id("List-" + at), "List " + at,
                needs(lists.get(at)), shop.allowance(new Allows(Id.of("Book/Card").line(1), Level.KINDRED, Validity.ALWAYS))))
                .toList();
        return Shop.ask(Question.of(shop.market(), Supply.NONE, targets)).plan().orElseThrow();
    }

    private static int exact(Plan plan) {
        return plan.turnouts().stream().mapToInt(one -> one.standing(Truth.EXACT)).sum();
    }

    /**
     * Four frames for two cranks and a gun here, a crank and three guns there. Two of each let 2 + 1 and 1 + 2 stand for
     * themselves, one crank and three guns 1 + 1 and 1 + 3: six at the most.
     */
    @Test
    void asManyAsCanBeStandForThemselves() {
        Plan plan = plan(cars(4), List.of("2 Crank, 1 Gun", "1 Crank, 3 Gun"));
        assertEquals(6, exact(plan));
        assertEquals(1, plan.purchases().size());
    }

    /** Nothing is dearer for it: the crank that is on sale ready built would be truer still. */
    @Test
    void moneyComesFirst() {
        Plan plan = plan(cars(1), List.of("1 Crank", "1 Gun"));
        assertEquals(Shop.eur("9.00"), plan.total());
        assertEquals(1, exact(plan));
    }

    /** A reeve lies in the bundle, and five of twelve on foot are enough: two frames of four are built, nobody is worked over. */
    @Test
    void nothingIsDoneThatNeedNotBe() {
        Shop shop = new Shop().pieces("Foot", "Drummer", "Reeve").part("Sprue", "4 Foot", "3 Foot, 1 Drummer")
                .box("Start", "4 Sprue, 1 Reeve", "24.00");
        Turns turns = new Turns(Id.of("Book/Card").line(1), Shop.contents("1 Foot"), Shop.contents("1 Reeve").get(0),
                OptionalInt.of(2), Validity.ALWAYS);
        Plan plan = Shop.ask(Question.of(shop.market(), Supply.NONE, List.of(Target.now(id("List"), "List",
                needs("5 Foot, 1 Drummer, 1 Reeve"), shop.allowance(turns))))).plan().orElseThrow();
        assertEquals(2, plan.buildings().stream().mapToInt(one -> one.newly()).sum());
        assertEquals(List.of(), plan.conversions());
        assertEquals("2 Foot, 2 Sprue", Shop.left(plan));
    }

    private static int best(int frames, List<int[]> lists) {
        int best = -1;
        for (int cranks = 0; cranks <= frames; cranks++) {
            for (int guns = 0; cranks + guns <= frames; guns++) {
                int[] times = {cranks, guns, frames - cranks - guns};
                int[] there = new int[TYPES.length];
                for (int w = 0; w < WAYS.length; w++) {
                    for (int t = 0; t < TYPES.length; t++) {
                        there[t] += times[w] * WAYS[w][t];
                    }
                }
                int exact = 0;
                for (int[] list : lists) {
                    boolean enough = IntStream.of(there).sum() >= IntStream.of(list).sum();
                    for (int t = 0; enough && t < TYPES.length; t++) {
                        exact += Math.min(there[t], list[t]);
                    }
                    exact -= enough ? 0 : 1_000;
                }
                best = Math.max(best, exact);
            }
        }
        return best;
    }

    @Test
    void againstEveryWayToBuild() {
        int partly = 0;
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            int frames = 2 + random.nextInt(4);
            List<int[]> lists = new ArrayList<>();
            List<String> words = new ArrayList<>();
            for (int l = 0; l < 2 + random.nextInt(2); l++) {
                int[] list = new int[TYPES.length];
                for (int k = 0; k < frames; k++) {
                    list[random.nextInt(TYPES.length)]++;
                }
                lists.add(list);
                words.add(IntStream.range(0, TYPES.length).filter(t -> list[t] > 0).mapToObj(t -> list[t] + " " + TYPES[t])
                        .reduce((a, b) -> a + ", " + b).orElseThrow());
            }
            Plan plan = plan(cars(frames), words);
            assertEquals("Frames", plan.purchases().get(0).ware().code(), words.toString());
            assertEquals(best(frames, lists), exact(plan), words.toString());
            partly += exact(plan) < frames * lists.size() ? 1 : 0;
        }
        assertTrue(partly > 20, "Only " + partly + " cases leave anything to choose");
    }
}
