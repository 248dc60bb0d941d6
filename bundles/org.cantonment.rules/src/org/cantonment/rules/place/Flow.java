package org.cantonment.rules.place;

import java.util.Arrays;
import java.util.List;

/**
 * A greatest placement for chosen bays. Groups of alike supplies flow into slots along augmenting paths, so that whoever
 * stands somewhere never loses a place to a later one; then compulsory places are filled by moving groups on from slots
 * that have more than they must. (By the theorem of Mendelsohn and Dulmage both can be had to the full at once.)
 */
final class Flow {

    private final Bay[] bays;
    private final boolean[][] can;
    private final int[][] flow;
    private final int[] filled;
    private final int[] cameFrom;
    private final int[] queue;
    private final int groups;

    /**
     * @param chosen for each slot the number of its bay
     * @param choices what each group is
     * @param pins the one slot each group may stand in; -1 for any
     */
    Flow(List<Slot> slots, int[] chosen, int[] choices, int[] pins) {
        groups = choices.length;
        bays = new Bay[slots.size()];
        for (int s = 0; s < bays.length; s++) {
            bays[s] = slots.get(s).bays().get(chosen[s]);
        }
        can = new boolean[groups][bays.length];
        for (int g = 0; g < groups; g++) {
            for (int s = 0; s < bays.length; s++) {
                can[g][s] = (pins[g] < 0 || pins[g] == s) && bays[s].of().takes(choices[g]);
            }
        }
        flow = new int[groups][bays.length];
        filled = new int[bays.length];
        cameFrom = new int[groups + bays.length];
        queue = new int[groups + bays.length];
    }

    int[] filled() {
        return filled;
    }

    int[][] flow() {
        return flow;
    }

    long lacking() {
        long lacking = 0;
        for (int s = 0; s < bays.length; s++) {
            lacking += Math.max(0, bays[s].min() - filled[s]);
        }
        return lacking;
    }

    /** Places as many of so many more of a group as can be placed, and says how many that were. */
    int place(int group, int count) {
        int left = count;
        while (left > 0) {
            int end = search(group);
            if (end < 0) {
                break;
            }
            int amount = Math.min(left, bays[end].max() - filled[end]);
            amount = Math.min(amount, narrowest(end, group));
            shift(end, group, amount);
            filled[end] += amount;
            left -= amount;
        }
        return count - left;
    }

    /** Moves groups on so that compulsory places are filled as far as can be. */
    void fillCompulsory() {
        for (int s = 0; s < bays.length; s++) {
            while (filled[s] < bays[s].min()) {
                int donor = searchDonor(s);
                if (donor < 0) {
                    break;
                }
                move(donor, s);
            }
        }
    }

    /** Breadth first from a group to a slot with room; nodes are groups, then slots. */
    private int search(int group) {
        Arrays.fill(cameFrom, -2);
        int head = 0;
        int tail = 0;
        queue[tail++] = group;
        cameFrom[group] = -1;
        while (head < tail) {
            int node = queue[head++];
            if (node < groups) {
                for (int s = 0; s < bays.length; s++) {
                    if (can[node][s] && cameFrom[groups + s] == -2) {
                        cameFrom[groups + s] = node;
                        if (filled[s] < bays[s].max()) {
                            return s;
                        }
                        queue[tail++] = groups + s;
                    }
                }
            } else {
                for (int g = 0; g < groups; g++) {
                    if (flow[g][node - groups] > 0 && cameFrom[g] == -2) {
                        cameFrom[g] = node;
                        queue[tail++] = g;
                    }
                }
            }
        }
        return -1;
    }

    private int narrowest(int end, int group) {
        int least = Integer.MAX_VALUE;
        int at = cameFrom[groups + end];
        while (at != group) {
            int slot = cameFrom[at] - groups;
            least = Math.min(least, flow[at][slot]);
            at = cameFrom[groups + slot];
        }
        return least;
    }

    private void shift(int end, int group, int amount) {
        int slot = end;
        int at = cameFrom[groups + end];
        flow[at][slot] += amount;
        while (at != group) {
            slot = cameFrom[at] - groups;
            flow[at][slot] -= amount;
            at = cameFrom[groups + slot];
            flow[at][slot] += amount;
        }
    }

    /** Breadth first backwards from a slot that lacks to one that has more than it must. */
    private int searchDonor(int slot) {
        Arrays.fill(cameFrom, -2);
        int head = 0;
        int tail = 0;
        queue[tail++] = groups + slot;
        cameFrom[groups + slot] = -1;
        while (head < tail) {
            int to = queue[head++] - groups;
            for (int g = 0; g < groups; g++) {
                if (!can[g][to] || cameFrom[g] != -2) {
                    continue;
                }
                for (int s = 0; s < bays.length; s++) {
                    if (flow[g][s] > 0 && cameFrom[groups + s] == -2) {
                        cameFrom[g] = groups + to;
                        cameFrom[groups + s] = g;
                        if (filled[s] > bays[s].min()) {
                            return s;
                        }
                        queue[tail++] = groups + s;
                    }
                }
            }
        }
        return -1;
    }

    /** Moves as many along the path found as all of it can give and take. */
    private void move(int donor, int slot) {
        int amount = Math.min(filled[donor] - bays[donor].min(), bays[slot].min() - filled[slot]);
        for (int from = donor; from != slot; from = next(from)) {
            amount = Math.min(amount, flow[cameFrom[groups + from]][from]);
        }
        for (int from = donor; from != slot; from = next(from)) {
            int group = cameFrom[groups + from];
            flow[group][from] -= amount;
            flow[group][next(from)] += amount;
        }
        filled[donor] -= amount;
        filled[slot] += amount;
    }

    private int next(int slot) {
        return cameFrom[cameFrom[groups + slot]] - groups;
    }
}
