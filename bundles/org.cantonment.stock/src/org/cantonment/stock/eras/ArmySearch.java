package org.cantonment.stock.eras;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Depot;

/**
 * The army of most points: how many of each candidate, most of the densest first, as long as there is enough. A branch is
 * left where what is not yet spent cannot be worth more. Where several armies cost as much, the first found stands, which
 * is the one with most of the units of most points to the piece, then of the first in the book.
 */
final class ArmySearch {

    private static final int BRANCHES = 12_000;
    private static final int BRANCHES_A_LOOK = 40;

    private final Depot depot;
    private final CancelToken cancel;
    private final List<Candidate> candidates;
    private final List<Prices.Worth> worths;
    private final int[] counts;
    private int[] best;
    private long bestPoints = -1;
    private long open = -1;
    private int branches;

    private ArmySearch(Depot depot, List<Candidate> candidates, CancelToken cancel) {
        this.depot = depot;
        this.cancel = cancel;
        this.candidates = candidates;
        worths = Prices.of(depot, candidates);
        counts = new int[candidates.size()];
        best = counts.clone();
    }

    /** So many of each candidate that was worth asking about. */
    record Found(List<Candidate> candidates, int[] counts, long points, long bound) {
    }

    /** The best of candidates that have to do with each other. Each needs something, and something is there for it. */
    static Found of(Depot depot, List<Candidate> together, CancelToken cancel) {
        List<Candidate> dense = new ArrayList<>(together);
        dense.sort(Comparator.comparingLong((Candidate one) -> -1000L * one.step().points() / one.pieces())
                .thenComparingInt(Candidate::place));
        ArmySearch search = new ArmySearch(depot, dense, cancel);
        search.descend(0, 0, new long[search.worths.size()]);
        return new Found(dense, search.best, search.bestPoints, Math.max(search.bestPoints, search.open));
    }

    private void descend(int at, long points, long[] spent) {
        cancel.check();
        if (points > bestPoints) {
            bestPoints = points;
            best = counts.clone();
        }
        if (at == candidates.size()) {
            return;
        }
        long bound = Long.MAX_VALUE;
        for (int i = 0; i < spent.length; i++) {
            bound = Math.min(bound, worths.get(i).bound(points, spent[i]));
        }
        if (bound <= bestPoints) {
            return;
        }
        if (branches >= BRANCHES) {
            open = Math.max(open, bound);
            return;
        }
        Gallop.Found most = Gallop.most(free(at), copies -> look(at, copies));
        branches += most.branches();
        open = most.decided() ? open : Math.max(open, bound);
        for (int copies = most.most(); copies >= 0; copies--) {
            counts[at] = copies;
            long[] further = spent.clone();
            for (int i = 0; i < further.length; i++) {
                further[i] += copies * worths.get(i).costs()[at];
            }
            descend(at + 1, points + (long) copies * candidates.get(at).step().points(), further);
        }
        counts[at] = 0;
    }

    /** How many more of this unit there may be, whatever its strength. */
    private int free(int at) {
        int free = candidates.get(at).most();
        for (int i = 0; i < at; i++) {
            free -= candidates.get(i).unit().equals(candidates.get(at).unit()) ? counts[i] : 0;
        }
        return free;
    }

    /** Whether there is enough for so many of this candidate beside those before it. */
    private Depot.Look look(int at, int copies) {
        List<Requirement> needs = new ArrayList<>();
        for (int i = 0; i < at; i++) {
            if (counts[i] > 0) {
                needs.addAll(candidates.get(i).times(counts[i]));
            }
        }
        needs.addAll(candidates.get(at).times(copies));
        return depot.look(needs, BRANCHES_A_LOOK, cancel);
    }
}
