package org.cantonment.rules.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.rules.place.Bay;
import org.cantonment.rules.place.Placement;
import org.cantonment.rules.place.Placer;
import org.cantonment.rules.place.Slot;
import org.cantonment.rules.place.Supply;
import org.cantonment.rules.view.Selector;
import org.junit.jupiter.api.Test;

/** The placing of units in billets against every way there is to do it, on small cases drawn from a fixed seed. */
class PlacingTest {

    private static final int CASES = 4000;
    private static final int CHOICES = 4;

    @Test
    void aPlacingIsFoundWheneverThereIsOneAndElseAsLittleAsCanBeIsAtFault() {
        Random random = new Random(1808);
        int placeable = 0;
        for (int i = 0; i < CASES; i++) {
            List<Slot> slots = slots(random);
            List<Supply> supplies = supplies(random, slots.size());
            Placement found = Placer.place(supplies, slots, CancelToken.NEVER);
            long least = new Enumeration(supplies, slots).least();
            assertEquals(least, faults(supplies, slots, found), "case " + i + ": " + supplies + slots);
            assertTrue(found.proven());
            placeable += least == 0 ? 1 : 0;
        }
        assertTrue(placeable > CASES / 10 && placeable < CASES * 9 / 10, placeable + " of " + CASES);
    }

    private static List<Slot> slots(Random random) {
        List<Slot> slots = new ArrayList<>();
        for (int s = 0; s < 1 + random.nextInt(3); s++) {
            List<Bay> bays = new ArrayList<>();
            for (int b = 0; b < 1 + random.nextInt(2); b++) {
                int min = random.nextInt(2);
                BitSet of = new BitSet();
                for (int c = 0; c < CHOICES; c++) {
                    of.set(c, random.nextInt(5) < 3);
                }
                bays.add(new Bay(min, min + random.nextInt(3), new Selector(List.of(), of, new BitSet(), false, "" + of)));
            }
            slots.add(new Slot(bays));
        }
        return slots;
    }

    private static List<Supply> supplies(Random random, int slots) {
        List<Supply> supplies = new ArrayList<>();
        for (int i = 0; i < random.nextInt(5); i++) {
            int pin = random.nextInt(6) == 0 ? random.nextInt(slots) : -1;
            supplies.add(new Supply(random.nextInt(CHOICES), 1 + random.nextInt(2), pin));
        }
        return supplies;
    }

    /** Counts the faults of a placement, and that it keeps every rule of placing. */
    private static long faults(List<Supply> supplies, List<Slot> slots, Placement found) {
        long faults = 0;
        int[] filled = new int[slots.size()];
        for (int i = 0; i < supplies.size(); i++) {
            int placed = 0;
            for (int s = 0; s < slots.size(); s++) {
                int here = found.where()[i][s];
                assertTrue(here == 0 || bay(slots, found, s).of().takes(supplies.get(i).choice()));
                assertTrue(here == 0 || supplies.get(i).pin() < 0 || supplies.get(i).pin() == s);
                placed += here;
                filled[s] += here;
            }
            assertEquals(placed, found.placed()[i]);
            faults += supplies.get(i).count() - placed;
        }
        for (int s = 0; s < slots.size(); s++) {
            assertEquals(filled[s], found.filled()[s]);
            assertTrue(filled[s] <= bay(slots, found, s).max());
            faults += Math.max(0, bay(slots, found, s).min() - filled[s]);
        }
        return faults;
    }

    private static Bay bay(List<Slot> slots, Placement found, int slot) {
        return slots.get(slot).bays().get(found.bays()[slot]);
    }

    /** Tries every bay for every slot and every slot, or none, for every single one. */
    private static final class Enumeration {

        private final List<Slot> slots;
        private final List<Supply> singles = new ArrayList<>();
        private final int[] filled;
        private final Bay[] bays;
        private long least = Long.MAX_VALUE;

        Enumeration(List<Supply> supplies, List<Slot> slots) {
            this.slots = slots;
            for (Supply supply : supplies) {
                for (int i = 0; i < supply.count(); i++) {
                    singles.add(supply);
                }
            }
            filled = new int[slots.size()];
            bays = new Bay[slots.size()];
        }

        long least() {
            choose(0);
            return least;
        }

        private void choose(int slot) {
            if (slot == bays.length) {
                put(0, 0);
                return;
            }
            for (Bay bay : slots.get(slot).bays()) {
                bays[slot] = bay;
                choose(slot + 1);
            }
        }

        private void put(int single, int unplaced) {
            if (single == singles.size()) {
                long faults = unplaced;
                for (int s = 0; s < bays.length; s++) {
                    faults += Math.max(0, bays[s].min() - filled[s]);
                }
                least = Math.min(least, faults);
                return;
            }
            put(single + 1, unplaced + 1);
            Supply supply = singles.get(single);
            for (int s = 0; s < bays.length; s++) {
                if (bays[s].of().takes(supply.choice()) && (supply.pin() < 0 || supply.pin() == s)
                        && filled[s] < bays[s].max()) {
                    filled[s]++;
                    put(single + 1, unplaced);
                    filled[s]--;
                }
            }
        }
    }
}
