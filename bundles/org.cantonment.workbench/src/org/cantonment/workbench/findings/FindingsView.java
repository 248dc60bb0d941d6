package org.cantonment.workbench.findings;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.cantonment.editor.text.Places;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.texteditor.ITextEditor;

/** Everything that was found, across all books: open ones as they are now, others as they were saved. */
public final class FindingsView extends ViewPart {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.findings";

    private final Action open = action("Go to the place", this::openSelected);
    private final Action openRule = action("Go to the rule", this::openRule);
    private final Action copy = action("Copy", () -> copy(true));
    private final Action copyMessage = action("Copy the message alone", () -> copy(false));
    private FindingsFilter filter;
    private FindingsTable table;
    private FindingRows source;

    @Override
    public void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        parent.setLayout(layout);
        filter = new FindingsFilter(parent, () -> source.query(), query -> source.ask(query),
                () -> table.table().setFocus());
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table = new FindingsTable(area, column -> source.ask(source.query().sorted(column)));
        table.table().addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> openSelected()));
        fillMenu();
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(),
                action("Copy", where(Text::copy, () -> copy(true))));
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.SELECT_ALL.getId(),
                action("Select all", where(Text::selectAll, () -> table.table().selectAll())));
        source = new FindingRows(shown -> parent.getDisplay().asyncExec(() -> show(shown)));
    }

    /** Does one thing to the words that are looked for while they are typed, and another everywhere else. */
    private Runnable where(Consumer<Text> typing, Runnable elsewhere) {
        return () -> {
            if (filter.words().isFocusControl()) {
                typing.accept(filter.words());
            } else {
                elsewhere.run();
            }
        };
    }

    private void fillMenu() {
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        table.table().setMenu(menu.createContextMenu(table.table()));
    }

    private void fill(IMenuManager menu) {
        boolean some = table.table().getSelectionCount() > 0;
        open.setEnabled(table.table().getSelectionCount() == 1);
        copy.setEnabled(some);
        copyMessage.setEnabled(some);
        openRule.setEnabled(open.isEnabled() && table.selected().get(0).rule().isPlaced());
        menu.add(open);
        menu.add(openRule);
        menu.add(copy);
        menu.add(copyMessage);
    }

    private static Action action(String label, Runnable task) {
        return new Action(label) {
            @Override
            public void run() {
                task.run();
            }
        };
    }

    private void show(FindingRows.Shown shown) {
        if (table.table().isDisposed()) {
            return;
        }
        filter.count(shown.all());
        table.show(shown.rows(), shown.query());
        setContentDescription(summary(shown));
    }

    private String summary(FindingRows.Shown shown) {
        int hidden = shown.all().size() - shown.rows().size();
        int beyond = shown.rows().size() - table.rows().size();
        if (shown.all().isEmpty()) {
            return "Nothing was found.";
        }
        return table.rows().size() + " shown" + (hidden == 0 ? "" : ", " + hidden + " hidden by the filter")
                + (beyond == 0 ? "" : ", " + beyond + " more: narrow the view to see them");
    }

    /**
     * The rows as they are shown.
     *
     * @return what fits the filter, in the order of the table
     */
    public List<FindingRow> rows() {
        return table.rows();
    }

    private void openSelected() {
        List<FindingRow> selected = table.selected();
        if (selected.size() == 1) {
            FindingRow row = selected.get(0);
            try {
                IEditorPart editor = IDE.openEditor(getSite().getPage(), row.file());
                if (editor instanceof ITextEditor text) {
                    text.selectAndReveal(row.offset(), row.length());
                }
            } catch (PartInitException failure) {
                ILog.of(FindingsView.class).error("Could not open " + row.file().getFullPath(), failure);
            }
        }
    }

    private void openRule() {
        List<FindingRow> selected = table.selected();
        if (selected.size() == 1 && selected.get(0).rule().isPlaced()) {
            Places.openLine(selected.get(0).rule().uri(), selected.get(0).rule().line());
        }
    }

    private void copy(boolean whole) {
        String text = table.selected().stream().map(row -> whole ? row.asText() : row.message())
                .collect(Collectors.joining(System.lineSeparator()));
        if (!text.isEmpty()) {
            Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
            clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
            clipboard.dispose();
        }
    }

    @Override
    public void setFocus() {
        if (table.table().getItemCount() > 0) {
            table.table().setFocus();
        } else {
            filter.setFocus();
        }
    }

    @Override
    public void dispose() {
        if (source != null) {
            source.dispose();
        }
        super.dispose();
    }
}
