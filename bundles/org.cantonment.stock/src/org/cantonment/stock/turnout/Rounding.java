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
        turns(network, state);
        int[] ways = fit.of(network).ways();
        if (ways != null) {
            System.arraycopy(ways, 0, state.low, 0, ways.length);
        } else {
            for (int l = 0; l < in.lumps().size(); l++) {
                build(network, state, l);
            }
        }
        System.arraycopy(state.low, 0, state.high, 0, state.low.length);
        return state.possible(in) ? Optional.of(Network.of(in, state, priced)) : Optional.empty();
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

    private void turns(Network network, State state) {
        for (int i = 0; i < in.turns().size(); i++) {
            Turn turn = in.turns().get(i);
            int wanted = (network.converted(i) + turn.conversion().gives() - 1) / turn.conversion().gives();
            state.turnsLow[i] = Math.max(state.turnsLow[i], wanted);
            while (state.turnsLow[i] > network.state().turnsLow[i] && !state.possible(in)) {
                state.turnsLow[i]--;
            }
        }
        System.arraycopy(state.turnsLow, 0, state.turnsHigh, 0, state.turnsLow.length);
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
