package org.cantonment.rules.muster;

import java.util.Arrays;
import java.util.List;

import org.cantonment.rules.view.Selector;

/**
 * How many of each choice stand in each formation of a muster: gathered in one pass when first asked, so that hundreds of
 * questions about every formation do not walk through the list hundreds of times.
 */
final class Counts {

    private static final int MOST_CELLS = 2_000_000;

    private final List<Node> nodes;
    private final int choices;
    private long[][] within;
    private long[][] directly;
    private boolean tooMany;

    Counts(List<Node> nodes, int choices) {
        this.nodes = nodes;
        this.choices = choices;
    }

    /** How many stand in one copy of a formation; -1 if that is not kept, and has to be counted. */
    long within(Selector of, Node formation) {
        return gathered() && !of.hasSupports() ? sum(of, within[formation.index]) : -1;
    }

    /** How many stand in one copy of a formation itself; -1 if that is not kept, and has to be counted. */
    long directly(Selector of, Node formation) {
        return gathered() && !of.hasSupports() ? sum(of, directly[formation.index]) : -1;
    }

    private static long sum(Selector of, long[] counts) {
        long sum = 0;
        for (int choice = of.nextChoice(0); choice >= 0; choice = of.nextChoice(choice + 1)) {
            sum += counts[choice];
        }
        return sum;
    }

    private boolean gathered() {
        if (within == null && !tooMany) {
            gather();
        }
        return !tooMany;
    }

    private void gather() {
        long formations = nodes.stream().filter(node -> node.formation() != null).count();
        tooMany = formations * choices > MOST_CELLS;
        if (tooMany) {
            return;
        }
        within = new long[nodes.size()][];
        directly = new long[nodes.size()][];
        for (Node node : nodes) {
            if (node.formation() != null) {
                within[node.index] = new long[choices];
                directly[node.index] = new long[choices];
            }
            if (node.choice != null) {
                enter(node);
            }
        }
    }

    private void enter(Node node) {
        for (int at = node.parent; at >= 0; at = nodes.get(at).parent) {
            Node above = nodes.get(at);
            if (within[at] != null) {
                long each = node.copies / Math.max(1, above.copies);
                within[at][node.choice.index()] += each;
                directly[at][node.choice.index()] += at == node.parent ? each : 0;
            }
        }
    }

    /** The number of the choice of every node; -1 for one that the rules do not know. */
    static int[] choices(List<Node> nodes) {
        int[] all = new int[nodes.size()];
        Arrays.setAll(all, i -> nodes.get(i).choice == null ? -1 : nodes.get(i).choice.index());
        return all;
    }
}
