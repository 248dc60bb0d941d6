package org.cantonment.workbench.answers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.workbench.Icons;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** A tree of rows. What was open or selected stays so when other rows are shown. */
public final class AnswerTree {

    private static final int LEAST_WIDTH = 10;

    /**
     * A column.
     *
     * @param title its heading
     * @param weight its share of the width, in characters
     */
    public record Column(String title, int weight) {
    }

    private final Tree tree;
    private final ResourceManager images;
    private List<AnswerNode> nodes = List.of();

    /**
     * Makes the tree.
     *
     * @param parent an area with nothing else in it
     * @param columns from left to right
     */
    public AnswerTree(Composite parent, List<Column> columns) {
        TreeColumnLayout layout = new TreeColumnLayout();
        parent.setLayout(layout);
        tree = new Tree(parent, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        images = new LocalResourceManager(JFaceResources.getResources(), tree);
        tree.setHeaderVisible(true);
        tree.setLinesVisible(true);
        int letter = new PixelConverter(tree).convertWidthInCharsToPixels(1);
        for (Column column : columns) {
            TreeColumn made = new TreeColumn(tree, SWT.LEFT);
            made.setText(column.title());
            layout.setColumnData(made, new ColumnWeightData(column.weight(), LEAST_WIDTH * letter, true));
        }
        tree.addMouseMoveListener(this::tip);
    }

    /** The widget. */
    public Tree tree() {
        return tree;
    }

    /** The rows that are shown. */
    public List<AnswerNode> nodes() {
        return nodes;
    }

    /**
     * Gives the columns other headings.
     *
     * @param titles one for each column
     */
    public void head(List<String> titles) {
        for (int i = 0; i < titles.size(); i++) {
            if (!titles.get(i).equals(tree.getColumn(i).getText())) {
                tree.getColumn(i).setText(titles.get(i));
            }
        }
    }

    /** What is cut off in its column can be read whole under the pointer. */
    private void tip(MouseEvent event) {
        TreeItem item = tree.getItem(new Point(event.x, event.y));
        String text = item == null ? null : String.join("\n", ((AnswerNode) item.getData()).cells());
        if (text == null || !text.equals(tree.getToolTipText())) {
            tree.setToolTipText(text);
        }
    }

    /**
     * Shows other rows; those of the first level are open at first.
     *
     * @param newer the rows
     */
    public void show(List<AnswerNode> newer) {
        if (newer.equals(nodes)) {
            return;
        }
        Set<String> closed = new HashSet<>();
        Set<String> open = new HashSet<>();
        for (TreeItem item : tree.getItems()) {
            note(item, "", open, closed);
        }
        String selected = tree.getSelectionCount() == 0 ? "" : path(tree.getSelection()[0]);
        nodes = List.copyOf(newer);
        tree.setRedraw(false);
        tree.removeAll();
        for (AnswerNode node : nodes) {
            add(new TreeItem(tree, SWT.NONE), node, open, closed, selected);
        }
        tree.setRedraw(true);
    }

    private static void note(TreeItem item, String above, Set<String> open, Set<String> closed) {
        String path = above + '/' + item.getText();
        (item.getExpanded() || item.getItemCount() == 0 ? open : closed).add(path);
        for (TreeItem child : item.getItems()) {
            note(child, path, open, closed);
        }
    }

    private static String path(TreeItem item) {
        return (item.getParentItem() == null ? "" : path(item.getParentItem())) + '/' + item.getText();
    }

    private void add(TreeItem item, AnswerNode node, Set<String> open, Set<String> closed, String selected) {
        item.setData(node);
        for (int i = 0; i < node.cells().size(); i++) {
            item.setText(i, node.cell(i));
        }
        node.sign().ifPresent(sign -> item.setImage(images.get(Icons.severity(sign))));
        for (AnswerNode child : node.children()) {
            add(new TreeItem(item, SWT.NONE), child, open, closed, selected);
        }
        String path = path(item);
        item.setExpanded(item.getParentItem() == null ? !closed.contains(path) : open.contains(path));
        if (path.equals(selected)) {
            tree.setSelection(item);
        }
    }

    /** The selected row with all above it, the row itself first; empty if none is selected. */
    public List<AnswerNode> selected() {
        List<AnswerNode> path = new ArrayList<>();
        TreeItem item = tree.getSelectionCount() == 0 ? null : tree.getSelection()[0];
        for (; item != null; item = item.getParentItem()) {
            path.add((AnswerNode) item.getData());
        }
        return path;
    }

    /**
     * What the selected row stands for, or the nearest above it that stands for such a thing.
     *
     * @param <T> the type
     * @param type of what
     * @return what was found first on the way up
     */
    public <T> Optional<T> meant(Class<T> type) {
        return selected().stream().flatMap(node -> node.meaning().stream()).filter(type::isInstance).map(type::cast)
                .findFirst();
    }
}
