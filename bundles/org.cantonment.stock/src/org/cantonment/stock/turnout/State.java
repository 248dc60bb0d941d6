package org.cantonment.stock.turnout;

import java.util.Arrays;

import org.cantonment.stock.turnout.Instance.Lump;
import org.cantonment.stock.turnout.Instance.Room;
import org.cantonment.stock.turnout.Instance.Turn;

/** What a branch of the search has settled: bounds for ways of building and for conversions, and what types stand for. */
final class State {

    static final byte FREE = 0;
    static final byte ITSELF = 1;
    static final byte OTHERS = 2;

    final int[] low;
    final int[] high;
    final int[] turnsLow;
    final int[] turnsHigh;
    final byte[] mode;

    private State(int[] low, int[] high, int[] turnsLow, int[] turnsHigh, byte[] mode) {
        this.low = low;
        this.high = high;
        this.turnsLow = turnsLow;
        this.turnsHigh = turnsHigh;
        this.mode = mode;
    }

    static State root(Instance of) {
        State root = new State(new int[of.ways()], new int[of.ways()], new int[of.turns().size()],
                new int[of.turns().size()], new byte[of.types().size()]);
        for (Lump lump : of.lumps()) {
            Arrays.fill(root.high, lump.from(), lump.from() + lump.ways(), lump.frames().count());
        }
        for (Room room : of.rooms()) {
            for (int w = 0; w < root.high.length; w++) {
                if (room.weights()[w] > 0) {
                    root.high[w] = Math.min(root.high[w], room.most() / room.weights()[w]);
                }
            }
        }
        for (int i = 0; i < root.turnsHigh.length; i++) {
            root.turnsHigh[i] = of.turns().get(i).most();
        }
        return root;
    }

    State copy() {
        return new State(low.clone(), high.clone(), turnsLow.clone(), turnsHigh.clone(), mode.clone());
    }

    State withMode(int type, byte what) {
        State other = copy();
        other.mode[type] = what;
        return other;
    }

    State withWays(int way, int least, int most) {
        State other = copy();
        other.low[way] = least;
        other.high[way] = most;
        return other;
    }

    State withTurns(int turn, int least, int most) {
        State other = copy();
        other.turnsLow[turn] = least;
        other.turnsHigh[turn] = most;
        return other;
    }

    /** Whether what must be built can be built at all. Whether what must be worked over is there, the flow tells. */
    boolean possible(Instance of) {
        for (Lump lump : of.lumps()) {
            long frames = 0;
            for (int w = lump.from(); w < lump.from() + lump.ways(); w++) {
                frames += low[w];
            }
            if (frames > lump.frames().count()) {
                return false;
            }
        }
        for (Room room : of.rooms()) {
            long built = 0;
            for (int w = 0; w < low.length; w++) {
                built += (long) low[w] * room.weights()[w];
            }
            if (built > room.most()) {
                return false;
            }
        }
        return true;
    }

    /** How many of each type the conversions take that must be made. */
    long[] taken(Instance of) {
        long[] taken = new long[of.types().size()];
        for (int i = 0; i < turnsLow.length; i++) {
            Turn turn = of.turns().get(i);
            for (int k = 0; k < turn.from().length; k++) {
                taken[turn.from()[k]] += (long) turnsLow[i] * turn.takes()[k];
            }
        }
        return taken;
    }

    /** The most that frames of a lump can give of what these weights count, within the bounds. */
    int most(Lump lump, int[] weights) {
        long most = 0;
        int left = lump.frames().count();
        for (int w = 0; w < lump.ways(); w++) {
            most += (long) low[lump.from() + w] * weights[w];
            left -= low[lump.from() + w];
        }
        boolean[] used = new boolean[lump.ways()];
        for (int round = 0; round < lump.ways() && left > 0; round++) {
            int best = -1;
            for (int w = 0; w < lump.ways(); w++) {
                if (!used[w] && (best < 0 || weights[w] > weights[best])) {
                    best = w;
                }
            }
            used[best] = true;
            int more = Math.min(left, high[lump.from() + best] - low[lump.from() + best]);
            most += (long) more * weights[best];
            left -= more;
        }
        return (int) Math.min(Integer.MAX_VALUE / 4, most);
    }
}
