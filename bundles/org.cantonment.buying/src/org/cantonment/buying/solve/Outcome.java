package org.cantonment.buying.solve;

import java.util.Arrays;

/** What a search found. */
public final class Outcome {

    /** How it ended. */
    public enum State {
        /** The values are the best there are. */
        PROVEN,
        /** Cancelled, or out of work: nothing costs less than the bound. */
        STOPPED,
        /** Nothing lets all rows hold. */
        IMPOSSIBLE
    }

    private final State state;
    private final long[] values;
    private final long cost;
    private final long bound;
    private final long nodes;
    private final long pivots;
    private final boolean settled;

    Outcome(State state, long[] values, long cost, long bound, long nodes, long pivots, boolean settled) {
        this.state = state;
        this.values = values;
        this.cost = cost;
        this.bound = bound;
        this.nodes = nodes;
        this.pivots = pivots;
        this.settled = settled;
    }

    /** Nobody looked for anything better than these values, which may be none. */
    static Outcome unsought(Programme programme, long[] values) {
        return new Outcome(State.STOPPED, values, values == null ? Long.MAX_VALUE : programme.cost(values), Long.MIN_VALUE, 0,
                0, false);
    }

    /** How it ended. */
    public State state() {
        return state;
    }

    /** Whether there are values. */
    public boolean found() {
        return values != null;
    }

    /** The best values found, one for each column. @throws IllegalStateException if there are none */
    public long[] values() {
        if (values == null) {
            throw new IllegalStateException("Nothing was found");
        }
        return Arrays.copyOf(values, values.length);
    }

    /** What they cost; {@link Long#MAX_VALUE} if there are none. */
    public long cost() {
        return cost;
    }

    /** Nothing costs less; proven in whole numbers. {@link Long#MIN_VALUE} while nothing is known. */
    public long bound() {
        return bound;
    }

    /** Whether none of the same cost is preferred; only where the best is proven can it be sure. */
    public boolean settled() {
        return settled;
    }

    /** How many places of the search were looked at. */
    public long nodes() {
        return nodes;
    }

    /** How many exchanges the simplex made. */
    public long pivots() {
        return pivots;
    }

    @Override
    public String toString() {
        return state + " cost " + cost + " bound " + bound + " nodes " + nodes + " pivots " + pivots;
    }
}
