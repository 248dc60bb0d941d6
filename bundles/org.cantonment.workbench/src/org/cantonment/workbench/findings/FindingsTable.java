package org.cantonment.workbench.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.cantonment.workbench.Icons;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.events.MouseMoveListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/**
 * The table of the view. Only rows that have changed are touched, and no more than {@value #LIMIT} are
 * made. (A table with {@code SWT.VIRTUAL} would need no limit, but on GTK it leaves items behind when it
 * shrinks, and the next change of theme reaches for them and takes the whole program down.)
 */
final class FindingsTable {

    /** More rows than anybody reads; whoever has more is asked to narrow the view. */
    static final int LIMIT = 1_000;

    private static final int WIDEST_LEAST = 14;

    private final Table table;
    private final ResourceManager images;
    private List<FindingRow> rows = List.of();

    FindingsTable(Composite parent, Consumer<FindingColumn> sort) {
        TableColumnLayout layout = new TableColumnLayout();
        parent.setLayout(layout);
        table = new Table(parent, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        images = new LocalResourceManager(JFaceResources.getResources(), table);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        int letter = new PixelConverter(table).convertWidthInCharsToPixels(1);
        for (FindingColumn column : FindingColumn.values()) {
            addColumn(column, layout, letter, sort);
        }
        table.addMouseMoveListener((MouseMoveListener) this::tip);
    }

    private void addColumn(FindingColumn column, TableColumnLayout layout, int letter,
            Consumer<FindingColumn> sort) {
        TableColumn made = new TableColumn(table, column == FindingColumn.LINE ? SWT.RIGHT : SWT.LEFT);
        made.setText(column.title());
        made.setMoveable(true);
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> sort.accept(column)));
        int least = Math.min(column.weight(), WIDEST_LEAST) * letter;
        layout.setColumnData(made, new ColumnWeightData(column.weight(), least, true));
    }

    /** What is cut off in its column can be read whole under the pointer. */
    private void tip(MouseEvent event) {
        TableItem item = table.getItem(new Point(event.x, event.y));
        FindingRow row = item == null ? null : rows.get(table.indexOf(item));
        String text = row == null ? null : row.rule().name().isEmpty() ? row.message()
                : row.message() + "\n" + row.rule().label();
        if (text == null || !text.equals(table.getToolTipText())) {
            table.setToolTipText(text);
        }
    }

    Table table() {
        return table;
    }

    /** Shows other rows; what was selected stays selected. */
    void show(List<FindingRow> newer, FindingQuery query) {
        Set<FindingRow> selected = new HashSet<>(selected());
        List<FindingRow> older = rows;
        rows = newer.size() > LIMIT ? newer.subList(0, LIMIT) : newer;
        table.setRedraw(false);
        if (rows.size() < table.getItemCount()) {
            table.remove(rows.size(), table.getItemCount() - 1);
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i >= older.size()) {
                fill(new TableItem(table, SWT.NONE), rows.get(i));
            } else if (!rows.get(i).equals(older.get(i))) {
                fill(table.getItem(i), rows.get(i));
            }
        }
        select(selected);
        table.setSortColumn(table.getColumn(query.column().ordinal()));
        table.setSortDirection(query.down() ? SWT.DOWN : SWT.UP);
        table.setRedraw(true);
    }

    private void fill(TableItem item, FindingRow row) {
        for (FindingColumn column : FindingColumn.values()) {
            item.setText(column.ordinal(), column.text(row));
        }
        item.setImage(FindingColumn.SEVERITY.ordinal(), images.get(Icons.severity(row.severity())));
    }

    private void select(Set<FindingRow> selected) {
        table.deselectAll();
        for (int i = 0; i < rows.size() && !selected.isEmpty(); i++) {
            if (selected.contains(rows.get(i))) {
                table.select(i);
            }
        }
    }

    /** The selected rows, in the order of the table. */
    List<FindingRow> selected() {
        List<FindingRow> chosen = new ArrayList<>();
        for (int index : table.getSelectionIndices()) {
            chosen.add(rows.get(index));
        }
        return chosen;
    }

    /** The rows that are shown. */
    List<FindingRow> rows() {
        return rows;
    }
}
