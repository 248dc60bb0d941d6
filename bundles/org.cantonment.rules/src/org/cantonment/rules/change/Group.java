package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.rules.muster.Node;

/** Entries of the written list that are just alike and stand in the same place, or one formation of it. */
final class Group {

    private final int index;
    private final Part part;
    private final Place home;
    private final Group above;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Edit> fates = new ArrayList<>();
    private Place inside;
    private int copies;

    /**
     * @param home where it stands; null for what stands where nothing can be put in
     * @param above the written formation that it stands in, or null
     */
    Group(int index, Part part, Place home, Group above) {
        this.index = index;
        this.part = part;
        this.home = home;
        this.above = above;
    }

    void take(Node node) {
        nodes.add(node);
        copies += node.count();
    }

    void open(Place place) {
        inside = place;
    }

    int index() {
        return index;
    }

    Part part() {
        return part;
    }

    Place home() {
        return home;
    }

    Group above() {
        return above;
    }

    List<Node> nodes() {
        return nodes;
    }

    Node first() {
        return nodes.get(0);
    }

    /** How many are written in one copy of what they stand in. */
    int copies() {
        return copies;
    }

    /** What may become of one of them. */
    List<Edit> fates() {
        return fates;
    }

    /** The place in the formation; null for units. */
    Place inside() {
        return inside;
    }

    boolean formation() {
        return inside != null;
    }

    /** Whether it stands in that formation, at any depth. */
    boolean within(Group formation) {
        for (Group at = above; at != null; at = at.above) {
            if (at == formation) {
                return true;
            }
        }
        return false;
    }

    /** Where in the list the one of this number stands, counted through the entries. */
    int position(int copy) {
        int left = copy;
        for (Node node : nodes) {
            if (left < node.count()) {
                return 2 * (part.first() + node.index());
            }
            left -= node.count();
        }
        return 2 * (part.first() + first().index());
    }
}
