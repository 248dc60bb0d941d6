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
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ILazyContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

/** The table of the view. It is asked only for the rows that are in sight. */
final class FindingsTable {

    private final TableViewer viewer;
    private final ResourceManager images;
    private List<FindingRow> rows = List.of();

    FindingsTable(Composite parent, Consumer<FindingColumn> sort) {
        TableColumnLayout layout = new TableColumnLayout();
        parent.setLayout(layout);
        viewer = new TableViewer(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        Table table = viewer.getTable();
        images = new LocalResourceManager(JFaceResources.getResources(), table);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        viewer.setUseHashlookup(true);
        viewer.setContentProvider((ILazyContentProvider) index -> viewer.replace(rows.get(index), index));
        int letter = new PixelConverter(table).convertWidthInCharsToPixels(1);
        for (FindingColumn column : FindingColumn.values()) {
            addColumn(column, layout, letter, sort);
        }
        ColumnViewerToolTipSupport.enableFor(viewer);
        viewer.setInput(this);
    }

    private void addColumn(FindingColumn column, TableColumnLayout layout, int letter,
            Consumer<FindingColumn> sort) {
        TableViewerColumn made = new TableViewerColumn(viewer, column == FindingColumn.LINE ? SWT.RIGHT : SWT.LEFT);
        made.getColumn().setText(column.title());
        made.getColumn().setMoveable(true);
        made.getColumn().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> sort.accept(column)));
        made.setLabelProvider(new Label(column));
        int least = Math.min(column.weight(), 14) * letter;
        layout.setColumnData(made.getColumn(), new ColumnWeightData(column.weight(), least, true));
    }

    /** Text, sign and tooltip of one column. */
    private final class Label extends ColumnLabelProvider {

        private final FindingColumn column;

        Label(FindingColumn column) {
            this.column = column;
        }

        @Override
        public String getText(Object element) {
            return column.text((FindingRow) element);
        }

        @Override
        public Image getImage(Object element) {
            return column == FindingColumn.SEVERITY
                    ? images.get(Icons.severity(((FindingRow) element).severity()))
                    : null;
        }

        @Override
        public String getToolTipText(Object element) {
            return column == FindingColumn.LINE ? null : getText(element);
        }
    }

    TableViewer viewer() {
        return viewer;
    }

    Table table() {
        return viewer.getTable();
    }

    /** Shows other rows; what was selected stays selected. */
    void show(List<FindingRow> newer, FindingQuery query) {
        Set<FindingRow> selected = new HashSet<>(selected());
        rows = newer;
        table().setRedraw(false);
        viewer.setItemCount(newer.size());
        table().clearAll();
        viewer.refresh(true);
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < newer.size() && !selected.isEmpty(); i++) {
            if (selected.contains(newer.get(i))) {
                indices.add(i);
            }
        }
        table().setSelection(indices.stream().mapToInt(Integer::intValue).toArray());
        table().setSortColumn(table().getColumn(query.column().ordinal()));
        table().setSortDirection(query.down() ? SWT.DOWN : SWT.UP);
        table().setRedraw(true);
    }

    /** The selected rows, in the order of the table. */
    List<FindingRow> selected() {
        List<FindingRow> chosen = new ArrayList<>();
        for (int index : table().getSelectionIndices()) {
            if (index < rows.size()) {
                chosen.add(rows.get(index));
            }
        }
        return chosen;
    }

    List<FindingRow> rows() {
        return rows;
    }
}
