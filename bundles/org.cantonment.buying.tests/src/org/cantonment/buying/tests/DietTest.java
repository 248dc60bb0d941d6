package org.cantonment.buying.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.junit.jupiter.api.Test;

/**
 * Stigler's diet (The Cost of Subsistence, Journal of Farm Economics, 1945): the cheapest food for a year at the prices of
 * August 1939. Its linear optimum is 39.66 dollars, of wheat flour, liver, cabbage, spinach and navy beans. The figures are
 * those of nine of the 77 foods, as the examples of OR-Tools give them; the five of the optimum are among them, so the
 * optimum is the same. (That these nine are those that Stigler himself singled out is from memory.)
 */
class DietTest {

    private static final String[] FOODS = {"Wheat flour", "Evaporated milk", "Cheese", "Liver", "Cabbage", "Spinach",
        "Sweet potatoes", "Lima beans", "Navy beans"};

    /** A day's need in tenths: calories in thousands, protein, calcium, iron, vitamins A, B1, B2, niacin, vitamin C. */
    private static final int[] NEEDS = {30, 700, 8, 120, 50, 18, 27, 180, 750};

    /** What a dollar brings of each, in tenths, food by food. */
    private static final int[][] BRINGS = {{447, 14110, 20, 3650, 0, 554, 333, 4410, 0},
        {84, 4220, 151, 90, 260, 30, 235, 110, 600}, {74, 4480, 164, 190, 281, 8, 103, 40, 0},
        {22, 3330, 2, 1390, 1692, 64, 508, 3160, 5250}, {26, 1250, 40, 360, 72, 90, 45, 260, 53690},
        {11, 1060, 0, 1380, 9184, 57, 138, 330, 27550}, {96, 1380, 27, 540, 2907, 84, 54, 830, 19120},
        {174, 10550, 37, 4590, 51, 269, 382, 930, 0}, {269, 16910, 114, 7920, 0, 384, 246, 2170, 0}};

    /** In so many parts of a dollar for each food: whole numbers cost at most one part more for each of five foods. */
    private static void check(int parts) {
        ProgrammeMaker maker = new ProgrammeMaker();
        for (String food : FOODS) {
            maker.column(food, 1, 0, 100L * parts, 0);
        }
        for (int n = 0; n < NEEDS.length; n++) {
            Sum sum = new Sum();
            for (int f = 0; f < FOODS.length; f++) {
                sum.add(BRINGS[f][n], f);
            }
            maker.atLeast(sum, 365L * parts * NEEDS[n]);
        }
        Programme programme = maker.make();
        Outcome outcome = SolverTest.solve(programme);
        assertEquals(Outcome.State.PROVEN, outcome.state());
        assertTrue(programme.holds(outcome.values()));
        assertTrue(outcome.cost() * 1000 >= 39_655L * parts && outcome.cost() * 1000 < 39_665L * parts + 5000, outcome + "");
        Set<String> eaten = new TreeSet<>();
        for (int f = 0; f < FOODS.length; f++) {
            if (outcome.values()[f] * 100 > parts) {
                eaten.add(FOODS[f]);
            }
        }
        assertEquals(Set.of("Wheat flour", "Liver", "Cabbage", "Spinach", "Navy beans"), eaten);
    }

    @Test
    void costsWhatStiglerAndTheSimplexSay() {
        check(100);
        check(1_000);
    }
}
