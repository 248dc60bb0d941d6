package org.cantonment.stock.turnout;

import java.util.Arrays;

import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.turnout.Instance.Arc;
import org.cantonment.stock.turnout.Instance.Hub;
import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Room;
import org.cantonment.stock.turnout.Instance.Turn;

/**
 * The flow of one state of the search: as good as any turnout of that state can be, and a turnout itself if its handfuls
 * can be built, its conversions are made and no type has two meanings.
 */
final class Network {

    /** What an arc is, for whoever reads a cut. */
    enum Kind {
        STACK, FRAMES, FRAMES_AS, FRAMES_CAPPED, TURN, SHARE, INNER, NEED
    }

    private static final int SOURCE = 0;
    private static final int SINK = 1;
    private static final int ENDLESS = Integer.MAX_VALUE / 4;

    private final Instance in;
    private final State state;
    private final MinCostFlow flow;
    private final Scale scale;
    private final int[] guessedArc;
    private final int[][] directArc;
    private final int[][] hubIn;
    private final int[][] hubOut;
    private final int[] lumpArc;
    private final int[][] lumpType;
    private final int[][] turnArc;
    private Kind[] kinds = new Kind[64];
    private int[] subject = new int[64];
    private int[] detail = new int[64];
    private int nodes;
    private int filled;
    private long[] tiers = new long[Scale.TIERS];

    private Network(Instance in, State state, boolean priced) {
        this.in = in;
        this.state = state;
        int caps = in.rooms().stream().mapToInt(room -> room.lumps().size()).sum();
        flow = new MinCostFlow(2 + in.types().size() + in.classes().size() + 2 * in.hubs().size() + in.lumps().size()
                + caps + in.turns().size());
        guessedArc = new int[in.types().size()];
        directArc = new int[in.classes().size()][];
        hubIn = new int[in.hubs().size()][];
        hubOut = new int[in.hubs().size()][];
        lumpArc = new int[in.lumps().size()];
        lumpType = new int[in.lumps().size()][in.types().size()];
        turnArc = new int[in.turns().size()][in.classes().size()];
        scale = Scale.of(in, priced);
    }

    /** @param priced whether it matters how true the pieces are, not only how many stand */
    static Network of(Instance in, State state, boolean priced) {
        Network network = new Network(in, state, priced);
        network.lay();
        network.filled = network.flow.run(SOURCE, SINK);
        network.tiers = network.countTiers();
        return network;
    }

    private void lay() {
        nodes = 2 + in.types().size() + in.classes().size();
        layStacks();
        layClasses();
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
        if (arc / 2 >= kinds.length) {
            kinds = Arrays.copyOf(kinds, arc);
            subject = Arrays.copyOf(subject, arc);
            detail = Arrays.copyOf(detail, arc);
        }
        kinds[arc / 2] = kind;
        subject[arc / 2] = what;
        detail[arc / 2] = more;
        return arc;
    }

    private void layStacks() {
        long[] taken = state.taken(in);
        for (int t = 0; t < in.types().size(); t++) {
            int known = (int) Math.max(0, in.known()[t] - taken[t]);
            int guessed = (int) (in.guessed()[t] - Math.max(0, taken[t] - in.known()[t]));
            arc(SOURCE, type(t), known, 0, Kind.STACK, t, 0);
            guessedArc[t] = arc(SOURCE, type(t), guessed, scale.weight(Scale.GUESSED), Kind.STACK, t, 1);
        }
    }

    private void layClasses() {
        for (int c = 0; c < in.classes().size(); c++) {
            Arc[] arcs = in.direct()[c];
            directArc[c] = new int[arcs.length];
            for (int i = 0; i < arcs.length; i++) {
                Truth truth = Truth.values()[arcs[i].tier()];
                boolean may = state.mode[arcs[i].type()] != (truth == Truth.EXACT ? State.OTHERS : State.ITSELF);
                directArc[c][i] = may
                        ? arc(type(arcs[i].type()), klass(c), ENDLESS, scale.price(truth, arcs[i].lent()),
                                Kind.INNER, 0, 0) : -1;
            }
            arc(klass(c), SINK, in.classes().get(c).count(), 0, Kind.NEED, c, 0);
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
                        : arc(type(hub.types()[i]), enter, ENDLESS, scale.price(Truth.STAND_IN, hub.lent()[i]),
                                Kind.INNER, 0, 0);
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
                    boolean asItIs = lump.frames().built() >= 0 && column[lump.frames().built()] > 0;
                    lumpType[l][t] = arc(via[t], type(t), most, asItIs ? 0 : scale.weight(Scale.BUILT),
                            Kind.FRAMES_AS, l, t);
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

    private void layTurns() {
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            int node = nodes++;
            Arrays.fill(turnArc[i], -1);
            int most = (int) Math.min(ENDLESS, (long) state.turnsHigh[i] * turn.conversion().gives());
            arc(SOURCE, node, most, 0, Kind.TURN, i, 0);
            for (int c = 0; c < in.classes().size() && state.mode[turn.to()] != State.OTHERS; c++) {
                for (Arc arc : in.direct()[c]) {
                    if (arc.type() == turn.to() && arc.tier() == Truth.EXACT.ordinal()) {
                        turnArc[i][c] = arc(node, klass(c), ENDLESS, scale.price(Truth.CONVERSION, false), Kind.INNER, 0, 0);
                    }
                }
            }
        }
    }

    private long[] countTiers() {
        long[] counts = new long[Scale.TIERS];
        for (int c = 0; c < directArc.length; c++) {
            for (int i = 0; i < directArc[c].length; i++) {
                int tier = in.direct()[c][i].tier();
                counts[Scale.LENT] += in.direct()[c][i].lent() ? direct(c, i) : 0;
                counts[Scale.NOT_EXACT] += tier > 0 ? direct(c, i) : 0;
                counts[Scale.NOT_KINDRED] += tier > 1 ? direct(c, i) : 0;
            }
        }
        for (int h = 0; h < hubIn.length; h++) {
            for (int i = 0; i < hubIn[h].length; i++) {
                counts[Scale.LENT] += in.hubs().get(h).lent()[i] ? hubIn(h, i) : 0;
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
                boolean asItIs = lump.frames().built() >= 0 && lump.gives()[lump.frames().built()][t] > 0;
                counts[Scale.BUILT] += asItIs ? 0 : drawn(l, t);
            }
        }
        return counts;
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
        return directArc[one][i] < 0 ? 0 : flow.flow(directArc[one][i]);
    }

    int hubIn(int hub, int i) {
        return hubIn[hub][i] < 0 ? 0 : flow.flow(hubIn[hub][i]);
    }

    int hubOut(int hub, int i) {
        return flow.flow(hubOut[hub][i]);
    }

    /** How many of the type come from the frames. */
    int drawn(int lump, int type) {
        return lumpType[lump][type] < 0 ? 0 : flow.flow(lumpType[lump][type]);
    }

    int guessed(int type) {
        return flow.flow(guessedArc[type]);
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
        return turnArc[turn][one] < 0 ? 0 : flow.flow(turnArc[turn][one]);
    }

    /** How many frames' pieces of a guessed lump are used. */
    int fromLump(int lump) {
        return flow.flow(lumpArc[lump]);
    }

    MinCostFlow flow() {
        return flow;
    }

    Kind kind(int arc) {
        return kinds[arc / 2];
    }

    int subject(int arc) {
        return subject[arc / 2];
    }

    int detail(int arc) {
        return detail[arc / 2];
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

    int typeOf(int node) {
        return node >= 2 && node < 2 + in.types().size() ? node - 2 : -1;
    }

    int nodes() {
        return nodes;
    }
}
