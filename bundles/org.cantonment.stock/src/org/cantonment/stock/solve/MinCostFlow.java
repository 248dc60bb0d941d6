package org.cantonment.stock.solve;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * A greatest flow of least cost, in whole numbers: shortest paths with potentials tell the arcs worth using, and on those
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
    private final long[] potential;
    private final long[] distance;
    private final int[] level;
    private final int[] at;
    private boolean priced;

    /** @param nodes how many nodes there are */
    public MinCostFlow(int nodes) {
        this.nodes = nodes;
        first = new int[nodes];
        Arrays.fill(first, -1);
        potential = new long[nodes];
        distance = new long[nodes];
        level = new int[nodes];
        at = new int[nodes];
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

    /** Sends as much as goes, as cheaply as that can be, and says how much that is. */
    public int run(int source, int sink) {
        int sent = 0;
        while (reprice(source, sink)) {
            while (levels(source, sink)) {
                System.arraycopy(first, 0, at, 0, nodes);
                int more = push(source, sink, Integer.MAX_VALUE);
                while (more > 0) {
                    sent += more;
                    more = push(source, sink, Integer.MAX_VALUE);
                }
            }
            if (!priced) {
                return sent;
            }
        }
        return sent;
    }

    /** Shortest distances by reduced cost; whether the sink can be reached. */
    private boolean reprice(int source, int sink) {
        if (!priced) {
            return true;
        }
        Arrays.fill(distance, FAR);
        PriorityQueue<long[]> queue = new PriorityQueue<>((one, other) -> one[0] != other[0]
                ? Long.compare(one[0], other[0]) : Long.compare(one[1], other[1]));
        distance[source] = 0;
        queue.add(new long[] {0, source});
        while (!queue.isEmpty()) {
            long[] entry = queue.poll();
            int node = (int) entry[1];
            if (entry[0] > distance[node]) {
                continue;
            }
            for (int arc = first[node]; arc >= 0; arc = next[arc]) {
                long further = entry[0] + cost[arc] + potential[node] - potential[to[arc]];
                if (room[arc] > 0 && further < distance[to[arc]]) {
                    distance[to[arc]] = further;
                    queue.add(new long[] {further, to[arc]});
                }
            }
        }
        if (distance[sink] == FAR) {
            return false;
        }
        for (int node = 0; node < nodes; node++) {
            potential[node] += Math.min(distance[node], distance[sink]);
        }
        return true;
    }

    private boolean worth(int node, int arc) {
        return room[arc] > 0 && cost[arc] + potential[node] - potential[to[arc]] == 0;
    }

    private boolean levels(int source, int sink) {
        Arrays.fill(level, -1);
        int[] queue = new int[nodes];
        int head = 0;
        int tail = 0;
        queue[tail++] = source;
        level[source] = 0;
        while (head < tail && level[sink] < 0) {
            int node = queue[head++];
            for (int arc = first[node]; arc >= 0; arc = next[arc]) {
                if (worth(node, arc) && level[to[arc]] < 0) {
                    level[to[arc]] = level[node] + 1;
                    queue[tail++] = to[arc];
                }
            }
        }
        return level[sink] >= 0;
    }

    private int push(int node, int sink, int most) {
        if (node == sink) {
            return most;
        }
        for (; at[node] >= 0; at[node] = next[at[node]]) {
            int arc = at[node];
            if (worth(node, arc) && level[to[arc]] == level[node] + 1) {
                int sent = push(to[arc], sink, Math.min(most, room[arc]));
                if (sent > 0) {
                    room[arc] -= sent;
                    room[arc ^ 1] += sent;
                    return sent;
                }
            }
        }
        return 0;
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
