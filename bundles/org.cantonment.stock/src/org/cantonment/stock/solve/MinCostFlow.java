package org.cantonment.stock.solve;

import java.util.Arrays;

/**
 * A greatest flow of least cost, in whole numbers: shortest paths tell the arcs worth using, and on those
 * a blocking flow after Dinic sends all that goes at that price at once. The same arcs in the same order always give the
 * same flow.
 */
public final class MinCostFlow {

    private static final long FAR = Long.MAX_VALUE / 4;

    private final int nodes;
    private final int[] first;
    private int[] next = new int[64];
    private int[] to = new int[64];
    private int[] room = new int[64];
    private long[] cost = new long[64];
    private int arcs;
    private final long[] distance;
    private final int[] level;
    private final int[] at;
    private final int[] queue;
    private boolean priced;

    /** @param nodes how many nodes there are */
    public MinCostFlow(int nodes) {
        this.nodes = nodes;
        first = new int[nodes];
        Arrays.fill(first, -1);
        distance = new long[nodes];
        level = new int[nodes];
        at = new int[nodes];
        queue = new int[nodes];
    }

    /**
     * An arc that takes up to so many, each at this cost.
     *
     * @param price at least 0
     * @return its number; the next number is its way back
     */
    public int arc(int from, int target, int capacity, long price) {
        if (arcs + 2 > to.length) {
            next = Arrays.copyOf(next, arcs * 2);
            to = Arrays.copyOf(to, arcs * 2);
            room = Arrays.copyOf(room, arcs * 2);
            cost = Arrays.copyOf(cost, arcs * 2);
        }
        link(from, target, capacity, price);
        link(target, from, 0, -price);
        priced |= price != 0;
        return arcs - 2;
    }

    private void link(int from, int target, int capacity, long price) {
        to[arcs] = target;
        room[arcs] = capacity;
        cost[arcs] = price;
        next[arcs] = first[from];
        first[from] = arcs++;
    }

    /** What flows through the arc. */
    public int flow(int arc) {
        return room[arc ^ 1];
    }

    /** What could still flow through the arc. */
    public int room(int arc) {
        return room[arc];
    }

    /** How many arcs there are, ways back included. */
    public int arcs() {
        return arcs;
    }

    /** Where the arc ends. */
    public int target(int arc) {
        return to[arc];
    }

    /** Where the arc begins. */
    public int source(int arc) {
        return to[arc ^ 1];
    }

    /**
     * Sends as much as goes, as cheaply as that can be, and says how much that is. What was sent before to another sink stays
     * there if every arc into that is full: it may come by other ways, and all of it together is as cheap as can be.
     */
    public int run(int source, int sink) {
        int sent = 0;
        while (reprice(source, sink)) {
            while (levels(source, sink)) {
                System.arraycopy(first, 0, at, 0, nodes);
                sent += push(source, sink, Integer.MAX_VALUE);
            }
            if (!priced) {
                return sent;
            }
        }
        return sent;
    }

    /** Shortest distances; whether the sink can be reached. What arcs cost is reduced so that the shortest ways cost nothing. */
    private boolean reprice(int source, int sink) {
        if (!priced) {
            return true;
        }
        Arrays.fill(distance, FAR);
        distance[source] = 0;
        DistanceHeap heap = new DistanceHeap();
        heap.add(0, source);
        int[] near = new int[nodes];
        while (heap.take() && heap.distance() < distance[sink]) {
            if (heap.distance() == distance[heap.node()]) {
                near[0] = heap.node();
                spread(near, heap);
            }
        }
        long most = distance[sink];
        if (most == FAR) {
            return false;
        }
        for (int arc = 0; arc < arcs; arc += 2) {
            long less = Math.min(distance[to[arc + 1]], most) - Math.min(distance[to[arc]], most);
            cost[arc] += less;
            cost[arc + 1] -= less;
        }
        return true;
    }

    /** Reaches on from a node; whatever lies no further than it is reached on from at once, without the heap. */
    private void spread(int[] near, DistanceHeap heap) {
        long here = heap.distance();
        int open = 1;
        while (open > 0) {
            int node = near[--open];
            for (int arc = first[node]; arc >= 0; arc = next[arc]) {
                if (room[arc] > 0 && here + cost[arc] < distance[to[arc]]) {
                    distance[to[arc]] = here + cost[arc];
                    if (cost[arc] == 0) {
                        near[open++] = to[arc];
                    } else {
                        heap.add(here + cost[arc], to[arc]);
                    }
                }
            }
        }
    }

    /** How many arcs that cost nothing more lie between each node and the sink; whether the source has a way at all. */
    private boolean levels(int source, int sink) {
        Arrays.fill(level, -1);
        int head = 0;
        int tail = 0;
        queue[tail++] = sink;
        level[sink] = 0;
        while (head < tail && level[source] < 0) {
            int node = queue[head++];
            for (int arc = first[node]; arc >= 0; arc = next[arc]) {
                if (level[to[arc]] < 0 && room[arc ^ 1] > 0 && cost[arc] == 0) {
                    level[to[arc]] = level[node] + 1;
                    queue[tail++] = to[arc];
                }
            }
        }
        return level[source] >= 0;
    }

    /** Sends up to so much from a node by the shortest of those ways; what is used up is not looked at again. */
    private int push(int node, int sink, int most) {
        if (node == sink) {
            return most;
        }
        int sent = 0;
        for (; at[node] >= 0; at[node] = next[at[node]]) {
            int arc = at[node];
            if (level[to[arc]] == level[node] - 1 && room[arc] > 0 && cost[arc] == 0) {
                int more = push(to[arc], sink, Math.min(most - sent, room[arc]));
                room[arc] -= more;
                room[arc ^ 1] += more;
                sent += more;
                if (sent == most) {
                    return sent;
                }
            }
        }
        return sent;
    }

    /** The nodes from which the sink can still be reached. */
    public boolean[] reaching(int sink) {
        boolean[] reaching = new boolean[nodes];
        int[] queue = new int[nodes];
        int head = 0;
        int tail = 0;
        queue[tail++] = sink;
        reaching[sink] = true;
        while (head < tail) {
            int node = queue[head++];
            for (int arc = first[node]; arc >= 0; arc = next[arc]) {
                if (room[arc ^ 1] > 0 && !reaching[to[arc]]) {
                    reaching[to[arc]] = true;
                    queue[tail++] = to[arc];
                }
            }
        }
        return reaching;
    }
}
