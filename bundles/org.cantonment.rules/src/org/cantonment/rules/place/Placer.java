package org.cantonment.rules.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.common.CancelToken;

/**
 * Places supplies in slots: as few as possible stand nowhere or are lacking, and among placements as good those that
 * place most, and then the first bays of the first slots. Supplies come in the order of the list, and an earlier one
 * never gives way to a later one.
 */
public final class Placer {

    private static final int MOST_TRIALS = 4096;
    private static final int LEAST_TRIALS = 64;
    private static final int MOST_WORK = 4_000_000;

    private final List<Supply> supplies;
    private final List<Slot> slots;
    private final int[] groupOf;
    private final int[] choices;
    private final int[] pins;
    private Placement best;
    private long bestFaults = Long.MAX_VALUE;
    private long bestUnplaced;

    private Placer(List<Supply> supplies, List<Slot> slots) {
        this.supplies = supplies;
        this.slots = slots;
        Map<Long, Integer> groups = new HashMap<>();
        groupOf = new int[supplies.size()];
        List<Supply> firsts = new ArrayList<>();
        for (int i = 0; i < groupOf.length; i++) {
            Supply supply = supplies.get(i);
            Integer group = groups.putIfAbsent((long) supply.choice() << 32 | supply.pin() & 0xffffffffL, firsts.size());
            if (group == null) {
                group = firsts.size();
                firsts.add(supply);
            }
            groupOf[i] = group;
        }
        choices = firsts.stream().mapToInt(Supply::choice).toArray();
        pins = firsts.stream().mapToInt(Supply::pin).toArray();
    }

    /** @throws org.cantonment.domain.common.Cancelled if the token says so */
    public static Placement place(List<Supply> supplies, List<Slot> slots, CancelToken cancel) {
        Placer placer = new Placer(supplies, slots);
        int[][] candidates = placer.candidates();
        int most = placer.mostTrials();
        long bound = placer.bound(candidates);
        if (ways(candidates, most) > most) {
            placer.descend(candidates, bound, most, cancel);
        }
        int[] digits = new int[slots.size()];
        boolean more = true;
        for (int trial = 0; trial < most && more && placer.bestFaults > bound; trial++) {
            cancel.check();
            placer.attempt(candidates, digits);
            more = next(digits, candidates);
        }
        Placement found = placer.best;
        boolean proven = placer.bestFaults == bound || !more;
        return new Placement(found.bays(), found.filled(), found.placed(), found.where(), proven);
    }

    /** How many ways there are to choose bays, or more than so many. */
    private static long ways(int[][] candidates, int most) {
        long ways = 1;
        for (int s = 0; s < candidates.length && ways <= most; s++) {
            ways *= candidates[s].length;
        }
        return ways;
    }

    /** Changes one slot's bay after another as long as that helps: a good start where not all ways can be tried. */
    private void descend(int[][] candidates, long bound, int most, CancelToken cancel) {
        int[] digits = new int[slots.size()];
        attempt(candidates, digits);
        int trials = 0;
        boolean helped = true;
        while (helped && bestFaults > bound && trials < most) {
            helped = false;
            for (int s = 0; s < digits.length && bestFaults > bound && trials < most; s++) {
                int kept = digits[s];
                for (int b = 0; b < candidates[s].length; b++) {
                    long before = bestFaults;
                    cancel.check();
                    digits[s] = b;
                    attempt(candidates, digits);
                    trials++;
                    kept = bestFaults < before ? b : kept;
                    helped |= bestFaults < before;
                }
                digits[s] = kept;
            }
        }
    }

    /** Fewer trials where each is costly, so that no list takes longer than a moment. */
    private int mostTrials() {
        return Math.max(LEAST_TRIALS, Math.min(MOST_TRIALS, MOST_WORK / (choices.length * slots.size() + groupOf.length + 1)));
    }

    /** What must be at fault even if every slot could be used through all of its bays at once. */
    private long bound(int[][] candidates) {
        List<Slot> loose = new ArrayList<>();
        boolean choice = false;
        for (int s = 0; s < candidates.length; s++) {
            List<Bay> bays = new ArrayList<>();
            for (int b : candidates[s]) {
                bays.add(slots.get(s).bays().get(b));
            }
            choice |= bays.size() > 1;
            loose.add(new Slot(List.of(Bay.union(bays))));
        }
        if (!choice) {
            return 0;
        }
        Flow flow = new Flow(loose, new int[loose.size()], choices, pins);
        long unplaced = 0;
        for (int i = 0; i < groupOf.length; i++) {
            unplaced += supplies.get(i).count() - flow.place(groupOf[i], supplies.get(i).count());
        }
        flow.fillCompulsory();
        return unplaced + flow.lacking();
    }

    /** For each slot the bays worth trying: those that somebody here fits, and the least demanding other one. */
    private int[][] candidates() {
        int[][] candidates = new int[slots.size()][];
        for (int s = 0; s < candidates.length; s++) {
            List<Integer> kept = new ArrayList<>();
            int idle = -1;
            List<Bay> bays = slots.get(s).bays();
            for (int b = 0; b < bays.size(); b++) {
                if (fits(bays.get(b), s)) {
                    kept.add(b);
                } else if (idle < 0 || bays.get(b).min() < bays.get(idle).min()) {
                    idle = b;
                }
            }
            if (idle >= 0) {
                kept.add(idle);
                kept.sort(null);
            }
            candidates[s] = kept.stream().mapToInt(Integer::intValue).toArray();
        }
        return candidates;
    }

    private boolean fits(Bay bay, int slot) {
        for (int g = 0; g < choices.length; g++) {
            if ((pins[g] < 0 || pins[g] == slot) && bay.max() > 0 && bay.of().takes(choices[g])) {
                return true;
            }
        }
        return false;
    }

    /** Counts on to the next choice of bays, the last slot fastest. */
    private static boolean next(int[] digits, int[][] candidates) {
        for (int s = digits.length - 1; s >= 0; s--) {
            if (++digits[s] < candidates[s].length) {
                return true;
            }
            digits[s] = 0;
        }
        return false;
    }

    private void attempt(int[][] candidates, int[] digits) {
        int[] chosen = new int[digits.length];
        for (int s = 0; s < chosen.length; s++) {
            chosen[s] = candidates[s][digits[s]];
        }
        Flow flow = new Flow(slots, chosen, choices, pins);
        int[] placed = new int[supplies.size()];
        long unplaced = 0;
        for (int i = 0; i < placed.length; i++) {
            placed[i] = flow.place(groupOf[i], supplies.get(i).count());
            unplaced += supplies.get(i).count() - placed[i];
        }
        flow.fillCompulsory();
        long faults = unplaced + flow.lacking();
        if (faults < bestFaults || faults == bestFaults && unplaced < bestUnplaced) {
            bestFaults = faults;
            bestUnplaced = unplaced;
            best = new Placement(chosen, flow.filled(), placed, where(flow.flow(), placed), false);
        }
    }

    /** Hands the groups' places out to the supplies, in list order and slot order. */
    private int[][] where(int[][] flow, int[] placed) {
        int[][] left = new int[flow.length][];
        for (int g = 0; g < left.length; g++) {
            left[g] = flow[g].clone();
        }
        int[][] where = new int[placed.length][slots.size()];
        for (int i = 0; i < placed.length; i++) {
            int wanted = placed[i];
            int[] places = left[groupOf[i]];
            for (int s = 0; s < places.length && wanted > 0; s++) {
                int here = Math.min(wanted, places[s]);
                where[i][s] = here;
                places[s] -= here;
                wanted -= here;
            }
        }
        return where;
    }
}
