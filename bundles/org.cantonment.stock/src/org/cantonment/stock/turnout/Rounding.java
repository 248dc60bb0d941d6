package org.cantonment.stock.turnout;

import java.util.Optional;

import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Room;
import org.cantonment.stock.turnout.Instance.Turn;

/** Makes a turnout of a flow that is none: builds what serves it most, one frame after another. Never proves anything. */
final class Rounding {

    private final Instance in;
    private final Fit fit;
    private final boolean priced;

    Rounding(Instance in, Fit fit, boolean priced) {
        this.in = in;
        this.fit = fit;
        this.priced = priced;
    }

    /** A turnout near the flow, if there is one at hand. */
    Optional<Network> round(Network network) {
        State state = network.state().copy();
        meanings(network, state);
        Network from = in.turns().isEmpty() ? network : turned(network, state);
        int[] ways = fit.of(from).ways();
        if (ways != null) {
            System.arraycopy(ways, 0, state.low, 0, ways.length);
        } else {
            for (int l = 0; l < in.lumps().size(); l++) {
                build(from, state, l);
            }
        }
        System.arraycopy(state.low, 0, state.high, 0, state.low.length);
        return state.possible(in) ? fed(Network.of(in, state, priced), network.state(), state) : Optional.empty();
    }

    /** Frames built one after another may not feed the conversions that the flow made; then no more than must be are made. */
    private Optional<Network> fed(Network rounded, State before, State state) {
        if (rounded.fed()) {
            return Optional.of(rounded);
        }
        System.arraycopy(before.turnsLow, 0, state.turnsLow, 0, state.turnsLow.length);
        System.arraycopy(before.turnsLow, 0, state.turnsHigh, 0, state.turnsHigh.length);
        return Optional.of(Network.of(in, state, priced)).filter(Network::fed);
    }

    private void meanings(Network network, State state) {
        if (!in.oneTable()) {
            return;
        }
        int[] itself = new int[in.types().size()];
        int[] others = new int[in.types().size()];
        Search.meant(network, itself, others);
        for (int t = 0; t < itself.length; t++) {
            if (state.mode[t] == State.FREE) {
                state.mode[t] = itself[t] >= others[t] ? State.ITSELF : State.OTHERS;
            }
        }
    }

    /** The flow where each conversion is made as often as the flow has it made, or as there is enough for that. */
    private Network turned(Network network, State state) {
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            int wanted = (network.converted(i) + turn.conversion().gives() - 1) / turn.conversion().gives();
            int low = state.turnsLow[i];
            int high = Math.max(low, wanted);
            while (low < high) {
                state.turnsLow[i] = low + (high - low + 1) / 2;
                if (Network.of(in, state, false).fed()) {
                    low = state.turnsLow[i];
                } else {
                    high = state.turnsLow[i] - 1;
                }
            }
            state.turnsLow[i] = low;
        }
        System.arraycopy(state.turnsLow, 0, state.turnsHigh, 0, state.turnsLow.length);
        return Network.of(in, state, priced);
    }

    private void build(Network network, State state, int l) {
        Lump lump = in.lumps().get(l);
        int[] wanted = new int[in.types().size()];
        for (int t = 0; t < wanted.length; t++) {
            wanted[t] = network.drawn(l, t);
        }
        int left = lump.frames().count();
        for (int w = 0; w < lump.ways(); w++) {
            left -= state.low[lump.from() + w];
            serve(lump, w, state.low[lump.from() + w], wanted);
        }
        for (; left > 0; left--) {
            int way = mostServing(lump, state, wanted);
            if (way < 0) {
                return;
            }
            state.low[lump.from() + way]++;
            serve(lump, way, 1, wanted);
        }
    }

    private int mostServing(Lump lump, State state, int[] wanted) {
        int best = -1;
        long most = 0;
        for (int w = 0; w < lump.ways(); w++) {
            long serves = 0;
            for (int t = 0; t < wanted.length; t++) {
                serves += Math.min(wanted[t], lump.gives()[w][t]);
            }
            int at = lump.from() + w;
            if (serves > most && state.low[at] < state.high[at] && room(state, at)) {
                best = w;
                most = serves;
            }
        }
        return best;
    }

    private boolean room(State state, int way) {
        for (Room room : in.rooms()) {
            if (room.weights()[way] > 0) {
                long built = room.weights()[way];
                for (int w = 0; w < state.low.length; w++) {
                    built += (long) state.low[w] * room.weights()[w];
                }
                if (built > room.most()) {
                    return false;
                }
            }
        }
        return true;
    }

    private static void serve(Lump lump, int way, int frames, int[] wanted) {
        for (int t = 0; t < wanted.length; t++) {
            wanted[t] = (int) Math.max(0, wanted[t] - (long) frames * lump.gives()[way][t]);
        }
    }
}
