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
    /** As told: where each arc begins and ends, an arc and its way back behind each other. */
    private int[] ends = new int[64];
    private int[] capacity = new int[64];
    private long[] price = new long[64];
    private int arcs;
    private boolean priced;

    /** As it is run: the arcs of a node lie behind each other, the last told first. Each has its place here. */
    private int[] place = new int[0];
    private final int[] first;
    private int[] to;
    private int[] room;
    private long[] cost;
    private int[] back;

    private final long[] distance;
    private final int[] level;
    private final int[] at;
    private final int[] queue;

    /** @param nodes how many nodes there are */
    public MinCostFlow(int nodes) {
        this.nodes = nodes;
        first = new int[nodes + 1];
        distance = new long[nodes];
        level = new int[nodes];
        at = new int[nodes];
        queue = new int[nodes];
    }

    /**
     * An arc that takes up to so many, each at this cost; before anything is sent.
     *
     * @param cost at least 0
     * @return its number; the next number is its way back
     */
    public int arc(int from, int target, int most, long cost) {
        if (arcs + 2 > ends.length) {
            ends = Arrays.copyOf(ends, arcs * 2);
            capacity = Arrays.copyOf(capacity, arcs);
            price = Arrays.copyOf(price, arcs);
        }
        ends[arcs] = from;
        ends[arcs + 1] = target;
        capacity[arcs / 2] = most;
        price[arcs / 2] = cost;
        priced |= cost != 0;
        arcs += 2;
        return arcs - 2;
    }

    /** What flows through the arc. */
    public int flow(int arc) {
        return room[place[arc ^ 1]];
    }

    /** What could still flow through the arc. */
    public int room(int arc) {
        return room[place[arc]];
    }

    /** How many arcs there are, ways back included. */
    public int arcs() {
        return arcs;
    }

    /** Where the arc ends. */
    public int target(int arc) {
        return ends[arc ^ 1];
    }

    /** Where the arc begins. */
    public int source(int arc) {
        return ends[arc];
    }

    /** Puts the arcs of each node behind each other, so that who goes from node to node need not jump from arc to arc. */
    private void settle() {
        place = new int[arcs];
        to = new int[arcs];
        room = new int[arcs];
        cost = new long[arcs];
        back = new int[arcs];
        for (int arc = 0; arc < arcs; arc++) {
            first[ends[arc] + 1]++;
        }
        for (int node = 0; node < nodes; node++) {
            first[node + 1] += first[node];
            at[node] = first[node];
        }
        for (int arc = arcs - 1; arc >= 0; arc--) {
            int here = at[ends[arc]]++;
            place[arc] = here;
            to[here] = ends[arc ^ 1];
            room[here] = (arc & 1) == 0 ? capacity[arc / 2] : 0;
            cost[here] = (arc & 1) == 0 ? price[arc / 2] : -price[arc / 2];
        }
        for (int arc = 0; arc < arcs; arc++) {
            back[place[arc]] = place[arc ^ 1];
        }
    }

    /**
     * Sends as much as goes, as cheaply as that can be, and says how much that is. What was sent before to another sink stays
     * there if every arc into that is full: it may come by other ways, and all of it together is as cheap as can be.
     */
    public int run(int source, int sink) {
        if (place.length < arcs) {
            settle();
        }
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
        for (int node = 0; node < nodes; node++) {
            long here = Math.min(distance[node], most);
            for (int arc = first[node]; arc < first[node + 1]; arc++) {
                cost[arc] += here - Math.min(distance[to[arc]], most);
            }
        }
        return true;
    }

    /** Reaches on from a node; whatever lies no further than it is reached on from at once, without the heap. */
    private void spread(int[] near, DistanceHeap heap) {
        long here = heap.distance();
        int open = 1;
        while (open > 0) {
            int node = near[--open];
            for (int arc = first[node]; arc < first[node + 1]; arc++) {
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
            for (int arc = first[node]; arc < first[node + 1]; arc++) {
                if (cost[arc] == 0 && level[to[arc]] < 0 && room[back[arc]] > 0) {
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
        for (; at[node] < first[node + 1]; at[node]++) {
            int arc = at[node];
            if (cost[arc] == 0 && room[arc] > 0 && level[to[arc]] == level[node] - 1) {
                int more = push(to[arc], sink, Math.min(most - sent, room[arc]));
                room[arc] -= more;
                room[back[arc]] += more;
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
            for (int arc = first[node]; arc < first[node + 1]; arc++) {
                if (!reaching[to[arc]] && room[back[arc]] > 0) {
                    reaching[to[arc]] = true;
                    queue[tail++] = to[arc];
                }
            }
        }
        return reaching;
    }
}
