package org.cantonment.stock.turnout;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.turnout.Instance.Direct;
import org.cantonment.stock.turnout.Instance.Crowd;
import org.cantonment.stock.turnout.Instance.Hub;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Room;
import org.cantonment.stock.turnout.Instance.Turn;
import org.cantonment.stock.turnout.Labels.Kind;

/**
 * The flow of one state of the search: as good as any turnout of that state can be, and a turnout itself if its handfuls
 * can be built, its conversions are made and no type has two meanings.
 */
final class Network {

    private static final Truth[] TRUTHS = Truth.values();
    private static final int SOURCE = 0;
    private static final int SINK = 1;
    private static final int ENDLESS = Integer.MAX_VALUE / 4;

    private final Instance in;
    private final State state;
    private final MinCostFlow flow;
    private final Scale scale;
    private final int[] guessedArc;
    private final int[][] directArc;
    private final int[][] againArc;
    private final CrowdWays crowds;
    private final int[][] hubIn;
    private final int[][] hubOut;
    private final int[] lumpArc;
    private final int[][] lumpType;
    private final int[][] turnArc;
    private final int[] spare;
    private final int feed;
    private final Labels labels = new Labels();
    private int nodes;
    private boolean fed;
    private int filled;
    private long[] tiers = new long[Scale.TIERS];

    private Network(Instance in, State state, boolean priced) {
        this.in = in;
        this.state = state;
        int caps = in.rooms().stream().mapToInt(room -> room.lumps().size()).sum();
        boolean[] taken = in.taken();
        int spares = (int) IntStream.range(0, taken.length).filter(t -> taken[t]).count();
        flow = new MinCostFlow(3 + in.types().size() + spares + in.classes().size() + 2 * in.hubs().size() + in.lumps().size()
                + in.crowds().size() + caps + in.turns().size());
        guessedArc = new int[in.types().size()];
        directArc = new int[in.classes().size()][];
        againArc = new int[in.classes().size()][];
        crowds = new CrowdWays(in);
        hubIn = new int[in.hubs().size()][];
        hubOut = new int[in.hubs().size()][];
        lumpArc = new int[in.lumps().size()];
        lumpType = new int[in.lumps().size()][in.types().size()];
        turnArc = new int[in.turns().size()][in.classes().size()];
        scale = Scale.of(in, priced);
        nodes = 2 + in.types().size() + in.classes().size();
        feed = nodes++;
        spare = new int[in.types().size()];
        for (int t = 0; t < spare.length; t++) {
            spare[t] = taken[t] ? nodes++ : type(t);
        }
    }

    /** @param priced whether it matters how true the pieces are, not only how many stand */
    static Network of(Instance in, State state, boolean priced) {
        Network network = new Network(in, state, priced);
        network.lay();
        long fed = Arrays.stream(state.taken(in)).sum();
        network.fed = fed == 0 || network.flow.run(SOURCE, network.feed) == fed;
        network.filled = network.flow.run(SOURCE, SINK);
        network.crowds.tellApart(network.flow);
        network.tiers = network.countTiers();
        return network;
    }

    private void lay() {
        layStacks();
        layFeeds();
        layClasses();
        layCrowds();
        layHubs();
        layLumps();
        layTurns();
    }

    private int type(int type) {
        return 2 + type;
    }

    private int klass(int one) {
        return 2 + in.types().size() + one;
    }

    private int arc(int from, int to, int capacity, long price, Kind kind, int what, int more) {
        int arc = flow.arc(from, to, capacity, price);
        labels.put(arc, kind, what, more);
        return arc;
    }

    private void layStacks() {
        for (int t = 0; t < in.types().size(); t++) {
            arc(SOURCE, spare[t], in.known()[t], 0, Kind.STACK, t, 0);
            guessedArc[t] = in.guessed()[t] == 0 ? -1
                    : arc(SOURCE, spare[t], in.guessed()[t], scale.weight(Scale.GUESSED), Kind.STACK, t, 1);
        }
    }

    /** What conversions take goes out first, to a sink of its own; what they leave goes on to stand somewhere. */
    private void layFeeds() {
        long[] taken = state.taken(in);
        for (int t = 0; t < taken.length; t++) {
            if (spare[t] != type(t)) {
                arc(spare[t], type(t), ENDLESS, 0, Kind.INNER, 0, 0);
            }
            if (taken[t] > 0) {
                arc(spare[t], feed, (int) Math.min(ENDLESS, taken[t]), 0, Kind.FEED, t, 0);
            }
        }
    }

    private void layClasses() {
        for (int c = 0; c < in.classes().size(); c++) {
            Direct direct = in.direct()[c];
            int[] own = new int[direct.size()];
            int[] again = new int[in.remembers() ? own.length : 0];
            for (int i = 0; i < own.length; i++) {
                int type = direct.types()[i];
                int tier = direct.tiers()[i];
                boolean may = state.mode[type] != (tier == 0 ? State.OTHERS : State.ITSELF);
                own[i] = may && direct.crowds()[i] < 0 ? direct(c, type, tier, ENDLESS, scale.weight(Scale.OTHERWISE)) : -1;
                if (in.remembers()) {
                    int most = may ? in.before(c, i) : 0;
                    again[i] = most > 0 ? direct(c, type, tier, most, 0) : -1;
                }
            }
            directArc[c] = own;
            againArc[c] = again;
            arc(klass(c), SINK, in.classes().get(c).count(), 0, Kind.NEED, c, 0);
        }
    }

    private int direct(int one, int type, int tier, int most, long more) {
        return arc(type(type), klass(one), most, scale.price(TRUTHS[tier]) + more, Kind.INNER, 0, 0);
    }

    private void layCrowds() {
        for (int k = 0; k < in.crowds().size(); k++) {
            Crowd crowd = in.crowds().get(k);
            int node = nodes++;
            for (int type : crowd.types()) {
                crowds.enter(k, arc(type(type), node, ENDLESS, 0, Kind.INNER, 0, 0));
            }
            for (int i = 0; i < crowd.classes().length; i++) {
                crowds.leave(k, arc(node, klass(crowd.classes()[i]), ENDLESS,
                        scale.price(TRUTHS[crowd.tiers()[i]]) + scale.weight(Scale.OTHERWISE), Kind.INNER, 0, 0));
            }
        }
    }

    private void layHubs() {
        for (int h = 0; h < in.hubs().size(); h++) {
            Hub hub = in.hubs().get(h);
            int enter = nodes++;
            int leave = nodes++;
            arc(enter, leave, hub.most(), 0, Kind.SHARE, h, 0);
            hubIn[h] = new int[hub.types().length];
            for (int i = 0; i < hub.types().length; i++) {
                hubIn[h][i] = state.mode[hub.types()[i]] == State.ITSELF ? -1
                        : arc(type(hub.types()[i]), enter, ENDLESS, scale.price(Truth.STAND_IN), Kind.INNER, 0, 0);
            }
            hubOut[h] = new int[hub.classes().length];
            for (int i = 0; i < hub.classes().length; i++) {
                hubOut[h][i] = arc(leave, klass(hub.classes()[i]), ENDLESS, 0, Kind.INNER, 0, 0);
            }
        }
    }

    private void layLumps() {
        for (int l = 0; l < in.lumps().size(); l++) {
            Lump lump = in.lumps().get(l);
            int node = nodes++;
            lumpArc[l] = arc(SOURCE, node, state.most(lump, lump.totals()),
                    lump.frames().guessed() ? scale.weight(Scale.GUESSED) : 0, Kind.FRAMES, l, 0);
            int[] via = capNodes(l, node);
            Arrays.fill(lumpType[l], -1);
            for (int i = 0; i < lump.types().length; i++) {
                int t = lump.types()[i];
                int[] column = lump.columns()[i];
                int most = state.most(lump, column);
                if (most > 0) {
                    lumpType[l][t] = arc(via[t], lump.feeds() ? spare[t] : type(t), most,
                            lump.asItIs(t) ? 0 : scale.weight(Scale.BUILT), Kind.FRAMES_AS, l, t);
                }
            }
        }
    }

    /** The node through which each type leaves a lump: its own, or one of a cap; caps that overlap wait for the search. */
    private int[] capNodes(int l, int node) {
        int[] via = new int[in.types().size()];
        Arrays.fill(via, node);
        for (int r = 0; r < in.rooms().size(); r++) {
            Room room = in.rooms().get(r);
            boolean apart = room.lumps().contains(l);
            for (int t = 0; t < via.length; t++) {
                apart &= !room.types()[t] || via[t] == node;
            }
            if (apart) {
                int cap = nodes++;
                arc(node, cap, room.most(), 0, Kind.FRAMES_CAPPED, l, r);
                for (int t = 0; t < via.length; t++) {
                    via[t] = room.types()[t] ? cap : via[t];
                }
            }
        }
        return via;
    }

    private void turn(int from, int node, int i, int times) {
        arc(from, node, (int) Math.min(ENDLESS, (long) times * in.turns().get(i).conversion().gives()), 0, Kind.TURN, i, 0);
    }

    /** What is sure to be made is fed beforehand; what may be made takes at least one piece for each that it gives. */
    private void layTurns() {
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            int node = nodes++;
            Arrays.fill(turnArc[i], -1);
            int made = turn.scarce() < 0 ? state.turnsHigh[i] : state.turnsLow[i];
            turn(SOURCE, node, i, made);
            if (made < state.turnsHigh[i]) {
                turn(spare[turn.scarce()], node, i, state.turnsHigh[i] - made);
            }
            for (int c = 0; c < in.classes().size() && state.mode[turn.to()] != State.OTHERS; c++) {
                int at = in.direct()[c].at(turn.to());
                if (at >= 0 && in.direct()[c].tiers()[at] == Truth.EXACT.ordinal()) {
                    turnArc[i][c] = arc(node, klass(c), ENDLESS, scale.price(Truth.CONVERSION), Kind.INNER, 0, 0);
                }
            }
        }
    }

    private long[] countTiers() {
        long[] counts = new long[Scale.TIERS];
        for (int c = 0; c < directArc.length; c++) {
            for (int i = 0; i < directArc[c].length; i++) {
                int tier = in.direct()[c].tiers()[i];
                int stand = direct(c, i);
                counts[Scale.NOT_EXACT] += tier > 0 ? stand : 0;
                counts[Scale.NOT_KINDRED] += tier > 1 ? stand : 0;
                counts[Scale.OTHERWISE] += in.remembers() ? Math.max(0, stand - in.before(c, i)) : 0;
            }
        }
        for (int h = 0; h < hubIn.length; h++) {
            for (int i = 0; i < hubIn[h].length; i++) {
                counts[Scale.NOT_EXACT] += hubIn(h, i);
                counts[Scale.NOT_KINDRED] += hubIn(h, i);
            }
        }
        for (int i = 0; i < turnArc.length; i++) {
            counts[Scale.NOT_EXACT] += converted(i);
            counts[Scale.NOT_KINDRED] += converted(i);
            counts[Scale.CONVERTED] += converted(i);
        }
        for (int t = 0; t < guessedArc.length; t++) {
            counts[Scale.GUESSED] += guessed(t);
        }
        for (int l = 0; l < lumpArc.length; l++) {
            counts[Scale.GUESSED] += in.lumps().get(l).frames().guessed() ? flow.flow(lumpArc[l]) : 0;
            Lump lump = in.lumps().get(l);
            for (int t : lump.types()) {
                counts[Scale.BUILT] += lump.asItIs(t) ? 0 : drawn(l, t);
            }
        }
        return counts;
    }

    /** Whether all that must be worked over is there; if not, the flow is none. */
    boolean fed() {
        return fed;
    }

    int filled() {
        return filled;
    }

    long[] tiers() {
        return tiers;
    }

    Instance instance() {
        return in;
    }

    State state() {
        return state;
    }

    /** How many stand for the class by its i-th direct arc. */
    int direct(int one, int i) {
        return through(directArc[one][i]) + (in.remembers() ? through(againArc[one][i]) : 0) + crowds.direct(one, i);
    }

    private int through(int arc) {
        return arc < 0 ? 0 : flow.flow(arc);
    }

    int hubIn(int hub, int i) {
        return through(hubIn[hub][i]);
    }

    int hubOut(int hub, int i) {
        return flow.flow(hubOut[hub][i]);
    }

    /** How many of the type come from the frames. */
    int drawn(int lump, int type) {
        return through(lumpType[lump][type]);
    }

    int guessed(int type) {
        return through(guessedArc[type]);
    }

    /** How many that were worked over stand anywhere. */
    int converted(int turn) {
        int sum = 0;
        for (int c = 0; c < turnArc[turn].length; c++) {
            sum += converted(turn, c);
        }
        return sum;
    }

    int converted(int turn, int one) {
        return through(turnArc[turn][one]);
    }

    /** How many frames' pieces of a guessed lump are used. */
    int fromLump(int lump) {
        return flow.flow(lumpArc[lump]);
    }

    MinCostFlow flow() {
        return flow;
    }

    /** What the arcs are. */
    Labels labels() {
        return labels;
    }

    /** The nodes from which a need could still be met. */
    boolean[] reaching() {
        return flow.reaching(SINK);
    }

    /** The class of a node, or -1. */
    int classOf(int node) {
        int one = node - 2 - in.types().size();
        return one >= 0 && one < in.classes().size() ? one : -1;
    }

    int nodes() {
        return nodes;
    }
}
