package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Instance.Direct;
import org.cantonment.stock.turnout.Instance.Hub;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Turn;

/**
 * The best turnout of an instance: branch and bound, best bound first. A branch's bound is its flow; it closes where the
 * flow can be built and means one thing. A question without handfuls, conversions and double meanings closes at once.
 */
final class Search {

    /**
     * What came of it.
     *
     * @param best the best turnout
     * @param built the frames for each way of building
     * @param bound no turnout fills more
     * @param truest whether none is truer, too
     * @param root the flow without any branch
     * @param steps how many branches were looked at
     * @param meanings the types that had to be told what they stand for
     */
    record Outcome(
            Network best, int[] built, int bound, boolean truest, Network root, int steps, Set<Integer> meanings) {
    }

    private record Branch(Network network, int depth, int number) {
    }

    private static final Comparator<Branch> BEST_FIRST = Comparator
            .comparingInt((Branch branch) -> -branch.network().filled())
            .thenComparing(branch -> branch.network().tiers(), Arrays::compare)
            .thenComparingInt(branch -> -branch.depth()).thenComparingInt(Branch::number);

    private final Instance in;
    private final boolean priced;
    private final int limit;
    private final CancelToken cancel;
    private final Fit fit;
    private final PriorityQueue<Branch> open = new PriorityQueue<>(BEST_FIRST);
    private final Set<Integer> meanings = new TreeSet<>();
    private Network best;
    private int[] bestBuilt;
    private int steps;

    private Search(Instance in, boolean priced, int limit, CancelToken cancel) {
        this.in = in;
        this.priced = priced;
        this.limit = limit;
        this.cancel = cancel;
        fit = new Fit(in);
    }

    /**
     * Searches.
     *
     * @param priced whether the best is wanted; else only whether everything can be filled, and what is found where it
     *        cannot be need not be the best
     */
    static Outcome of(Instance in, boolean priced, int limit, CancelToken cancel) {
        return new Search(in, priced, limit, cancel).run();
    }

    private Outcome run() {
        Network root = Network.of(in, State.root(in), priced);
        if (!priced && root.filled() < in.needed()) {
            return new Outcome(root, null, root.filled(), false, root, 1, meanings);
        }
        visit(root, 0);
        while (!open.isEmpty() && steps < limit && better(open.peek().network())) {
            cancel.check();
            Branch branch = open.poll();
            for (State child : children(branch.network())) {
                if (child.possible(in)) {
                    visit(Network.of(in, child, priced), branch.depth() + 1);
                }
            }
        }
        boolean done = open.isEmpty() || !better(open.peek().network());
        int bound = !done ? open.peek().network().filled()
                : priced || best.filled() == in.needed() ? best.filled() : in.needed() - 1;
        return new Outcome(best, bestBuilt, bound, done && priced, root, steps, meanings);
    }

    private boolean better(Network network) {
        if (best == null || network.filled() != best.filled()) {
            return best == null || network.filled() > best.filled();
        }
        return priced && Arrays.compare(network.tiers(), best.tiers()) < 0;
    }

    private void visit(Network network, int depth) {
        steps++;
        if (!network.fed() || !better(network) || !priced && network.filled() < in.needed()) {
            return;
        }
        int[] built = closes(network);
        if (built != null) {
            best = network;
            bestBuilt = built;
            return;
        }
        if (depth % 8 == 0) {
            new Rounding(in, fit, priced).round(network).ifPresent(rounded -> {
                int[] ways = closes(rounded);
                if (ways != null && better(rounded)) {
                    best = rounded;
                    bestBuilt = ways;
                }
            });
        }
        open.add(new Branch(network, depth, steps));
    }

    /** What is built if the flow is a turnout; null if it is not. */
    private int[] closes(Network network) {
        return doubleMeaning(network) >= 0 || unmade(network) >= 0 ? null : fit.of(network).ways();
    }

    private int doubleMeaning(Network network) {
        if (!in.oneTable()) {
            return -1;
        }
        int[] itself = new int[in.types().size()];
        int[] others = new int[in.types().size()];
        meant(network, itself, others);
        for (int t = 0; t < itself.length; t++) {
            if (itself[t] > 0 && others[t] > 0) {
                return t;
            }
        }
        return -1;
    }

    /** How many of each type stand for themselves, and for others. */
    static void meant(Network network, int[] itself, int[] others) {
        Instance in = network.instance();
        for (int c = 0; c < in.classes().size(); c++) {
            Direct direct = in.direct()[c];
            for (int i = 0; i < direct.size(); i++) {
                (direct.tiers()[i] == Truth.EXACT.ordinal() ? itself : others)[direct.types()[i]] += network.direct(c, i);
            }
        }
        for (int h = 0; h < in.hubs().size(); h++) {
            Hub hub = in.hubs().get(h);
            for (int i = 0; i < hub.types().length; i++) {
                others[hub.types()[i]] += network.hubIn(h, i);
            }
        }
        for (int i = 0; i < in.turns().size(); i++) {
            itself[in.turns().get(i).to()] += network.converted(i);
        }
    }

    private int unmade(Network network) {
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            if (!turn.plain() && network.converted(i) > (long) network.state().turnsLow[i] * turn.conversion().gives()) {
                return i;
            }
        }
        return -1;
    }

    private List<State> children(Network network) {
        State state = network.state();
        int type = doubleMeaning(network);
        if (type >= 0) {
            meanings.add(type);
            return List.of(state.withMode(type, State.ITSELF), state.withMode(type, State.OTHERS));
        }
        int turn = unmade(network);
        if (turn >= 0) {
            int low = state.turnsLow[turn];
            int high = state.turnsHigh[turn];
            int middle = low + (high - low) / 2;
            return List.of(state.withTurns(turn, middle + 1, high), state.withTurns(turn, low, middle));
        }
        return split(state, fit.of(network).stuck());
    }

    /** Halves the widest choice among these frames; nothing if there is none left, for then they cannot be built. */
    private List<State> split(State state, List<Integer> lumps) {
        int widest = -1;
        for (int l : lumps) {
            Lump lump = in.lumps().get(l);
            for (int w = lump.from(); w < lump.from() + lump.ways(); w++) {
                if (state.high[w] > state.low[w]
                        && (widest < 0 || state.high[w] - state.low[w] > state.high[widest] - state.low[widest])) {
                    widest = w;
                }
            }
        }
        List<State> children = new ArrayList<>();
        if (widest >= 0) {
            int middle = state.low[widest] + (state.high[widest] - state.low[widest]) / 2;
            children.add(state.withWays(widest, middle + 1, state.high[widest]));
            children.add(state.withWays(widest, state.low[widest], middle));
        }
        return children;
    }
}
