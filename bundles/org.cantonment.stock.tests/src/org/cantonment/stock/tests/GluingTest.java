package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.need;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Gluing;
import org.cantonment.stock.turnout.Task;
import org.cantonment.stock.turnout.Together;
import org.junit.jupiter.api.Test;

/** One choice of what is glued, for several lists. */
class GluingTest {

    private static Things cars(Fixing fixing, int frames) {
        return new Things().piece("Crank", null).piece("Gun", null).part("Frame", fixing, "Crank", "Gun")
                .has(frames + " Frame");
    }

    private static Together ask(Things things, Task... tasks) {
        return Gluing.of(things.catalogue(), Supply.of(things.catalogue(), List.of(things.shelf())), List.of(tasks),
                Gluing.CHOICES, CancelToken.NEVER);
    }

    private static Task task(String list, int cranks, int guns) {
        return new Task(Id.of(list), List.of(need(list + "-C", cranks, "Crank"), need(list + "-G", guns, "Gun")),
                Allowance.EXACT);
    }

    @Test
    void oneOfEachServesBothRounds() {
        Together both = ask(cars(Fixing.GLUED, 2), task("R1", 1, 0), task("R2", 1, 1));
        assertEquals(0, both.lacking());
        assertTrue(both.proven());
        assertEquals(List.of(1, 1), both.builds().stream().map(build -> build.frames()).toList());
    }

    @Test
    void whatIsGluedStaysAndWhatIsLooseDoesNot() {
        Together glued = ask(cars(Fixing.GLUED, 2), task("R1", 2, 0), task("R2", 0, 2));
        assertEquals(2, glued.lacking());
        assertTrue(glued.proven());
        assertEquals(0, ask(cars(Fixing.LOOSE_BETWEEN_GAMES, 2), task("R1", 2, 0), task("R2", 0, 2)).lacking());
    }

    /** Every parting of two kinds of frames tried, each list filled by counting. */
    @Test
    void noChoiceLeavesLessShort() {
        Random random = new Random(7);
        for (int run = 0; run < 120; run++) {
            int a = random.nextInt(4);
            int b = random.nextInt(3);
            int[][] wants = new int[2 + random.nextInt(2)][];
            List<Task> tasks = new ArrayList<>();
            for (int i = 0; i < wants.length; i++) {
                wants[i] = new int[] {random.nextInt(5), random.nextInt(5), random.nextInt(3)};
                tasks.add(new Task(Id.of("L" + i), List.of(need("X" + i, wants[i][0], "X"), need("Y" + i, wants[i][1], "Y"),
                        need("Z" + i, wants[i][2], "Z")), Allowance.EXACT));
            }
            Things things = new Things().piece("X", null).piece("Y", null).piece("Z", null)
                    .part("A", "2 X", "Y", "X + Z").part("B", "2 Y", "Z").has(Math.max(1, a) + " A").has(Math.max(1, b) + " B");
            int most = 0;
            for (int a1 = 0; a1 <= Math.max(1, a); a1++) {
                for (int a2 = 0; a1 + a2 <= Math.max(1, a); a2++) {
                    for (int b1 = 0; b1 <= Math.max(1, b); b1++) {
                        int a3 = Math.max(1, a) - a1 - a2;
                        int x = 2 * a1 + a3;
                        int y = a2 + 2 * b1;
                        int z = a3 + Math.max(1, b) - b1;
                        int filled = 0;
                        for (int[] want : wants) {
                            filled += Math.min(x, want[0]) + Math.min(y, want[1]) + Math.min(z, want[2]);
                        }
                        most = Math.max(most, filled);
                    }
                }
            }
            Together together = ask(things, tasks.toArray(Task[]::new));
            assertEquals(most, together.filled(), "run " + run);
            assertTrue(together.proven(), "run " + run);
        }
    }
}
