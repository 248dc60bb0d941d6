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
		int[] digits = new int[slots.size()];
		boolean more = true;
		int trials = 0;
		while (more && placer.bestFaults > 0 && trials++ < MOST_TRIALS) {
			cancel.check();
			placer.attempt(candidates, digits);
			more = next(digits, candidates);
		}
		Placement found = placer.best;
		boolean proven = placer.bestFaults == 0 || !more;
		return new Placement(found.bays(), found.filled(), found.placed(), found.where(), proven);
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
