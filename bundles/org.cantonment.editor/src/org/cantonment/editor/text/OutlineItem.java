package org.cantonment.editor.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.editor.api.OutlineNode;

/**
 * An outline line with its way from the top. Two items are equal if they are reached by the same way,
 * so that a line stays open and selected although a newer snapshot has moved it.
 */
final class OutlineItem {

    private final String way;
    private final OutlineNode node;
    private final OutlineItem parent;
    private final List<OutlineItem> children;

    private OutlineItem(OutlineItem parent, String way, OutlineNode node) {
        this.parent = parent;
        this.way = way;
        this.node = node;
        children = items(this, way, node.children());
    }

    static List<OutlineItem> roots(List<OutlineNode> nodes) {
        return items(null, "", nodes);
    }

    private static List<OutlineItem> items(OutlineItem parent, String way, List<OutlineNode> nodes) {
        Map<String, Integer> seen = new HashMap<>();
        List<OutlineItem> items = new ArrayList<>(nodes.size());
        for (OutlineNode node : nodes) {
            int number = seen.merge(node.label(), 1, Integer::sum);
            items.add(new OutlineItem(parent, way + "/" + node.label() + "#" + number, node));
        }
        return List.copyOf(items);
    }

    OutlineNode node() {
        return node;
    }

    OutlineItem parent() {
        return parent;
    }

    List<OutlineItem> children() {
        return children;
    }

    /** The deepest of the items that covers a place, or null. */
    static OutlineItem at(List<OutlineItem> items, int offset) {
        OutlineItem best = null;
        for (OutlineItem item : items) {
            if (item.node.covers(offset)) {
                OutlineItem deeper = at(item.children, offset);
                best = deeper == null ? item : deeper;
            }
        }
        return best;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OutlineItem item && way.equals(item.way);
    }

    @Override
    public int hashCode() {
        return way.hashCode();
    }

    @Override
    public String toString() {
        return way;
    }
}
