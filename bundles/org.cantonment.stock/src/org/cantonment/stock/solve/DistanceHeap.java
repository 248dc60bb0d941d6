package org.cantonment.stock.solve;

import java.util.Arrays;

/** Nodes by their distance, the nearest first; of nodes as near the one with the least number. */
final class DistanceHeap {

    private long[] distances = new long[64];
    private int[] nodes = new int[64];
    private int size;
    private long distance;
    private int node;

    void add(long far, int what) {
        if (size == nodes.length) {
            distances = Arrays.copyOf(distances, 2 * size);
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        int at = size++;
        while (at > 0 && before(far, what, (at - 1) / 2)) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        distances[at] = far;
        nodes[at] = what;
    }

    /** Takes the nearest off; false if there is none. */
    boolean take() {
        if (size == 0) {
            return false;
        }
        distance = distances[0];
        node = nodes[0];
        size--;
        long far = distances[size];
        int what = nodes[size];
        int at = 0;
        int child = 1;
        while (child < size) {
            if (child + 1 < size && before(distances[child + 1], nodes[child + 1], child)) {
                child++;
            }
            if (before(far, what, child)) {
                break;
            }
            move(child, at);
            at = child;
            child = 2 * at + 1;
        }
        distances[at] = far;
        nodes[at] = what;
        return true;
    }

    private boolean before(long far, int what, int other) {
        return far < distances[other] || far == distances[other] && what < nodes[other];
    }

    private void move(int from, int target) {
        distances[target] = distances[from];
        nodes[target] = nodes[from];
    }

    /** How far away the one taken last is. */
    long distance() {
        return distance;
    }

    /** The one taken last. */
    int node() {
        return node;
    }
}
