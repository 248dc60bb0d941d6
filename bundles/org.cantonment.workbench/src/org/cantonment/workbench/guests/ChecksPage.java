package org.cantonment.workbench.guests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.cantonment.desk.checks.ChecksFolder;
import org.cantonment.rules.guest.CheckText;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.Refusal;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** The settings' page about checks of others: which are at hand, from where, and how they fare. */
public final class ChecksPage extends PreferencePage implements IWorkbenchPreferencePage {

    /** A line of the table. @param shut the name by which the check is let in again; empty if it is not shut out */
    record Row(String name, String from, String state, String words, String shut) {
    }

    private final Guests guests = GuestHouse.instance().guests();
    private TableViewer table;
    private Text words;
    private Button letIn;
    private Runnable noMore = () -> {
    };

    @Override
    public void init(IWorkbench workbench) {
        noDefaultAndApplyButton();
        setDescription("Checks that others wrote. A campaign turns one on with a line such as 'check Name with Setting 2'.");
    }

    @Override
    protected Control createContents(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
        Composite area = new Composite(page, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        area.setLayout(columns);
        table = new TableViewer(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.getTable().setHeaderVisible(true);
        column(columns, "Check", 20, Row::name);
        column(columns, "From", 60, Row::from);
        column(columns, "State", 30, Row::state);
        table.setContentProvider(ArrayContentProvider.getInstance());
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(SWT.DEFAULT, 140).applyTo(area);
        words = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.BORDER | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(400, 170).applyTo(words);
        letIn = new Button(page, SWT.PUSH);
        letIn.setText("&Ask it again");
        letIn.addListener(SWT.Selection, event -> guests.forgive(selected().shut()));
        Button open = new Button(page, SWT.PUSH);
        open.setText("Open the &folder");
        open.addListener(SWT.Selection, event -> openFolder());
        Label where = new Label(page, SWT.WRAP);
        where.setText("A jar that is put into " + ChecksFolder.path() + " is taken in at once, without a restart.");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(400, SWT.DEFAULT).applyTo(where);
        table.addSelectionChangedListener(event -> show());
        noMore = guests.onChange(() -> page.getDisplay().asyncExec(this::refresh));
        refresh();
        return page;
    }

    private void column(TableColumnLayout columns, String title, int letters, Function<Row, String> text) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        int least = new PixelConverter(table.getTable()).convertWidthInCharsToPixels(letters);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(letters, least, true));
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(row -> text.apply((Row) row)));
    }

    /** The lines: checks by name, then what was not let in. */
    static List<Row> rows(Guests guests) {
        List<Row> rows = new ArrayList<>();
        guests.known().forEach(check -> rows.add(row(check)));
        for (Refusal refusal : guests.refusals()) {
            rows.add(new Row(refusal.name(), refusal.origin().words(), "not let in", refusal.why(), ""));
        }
        return rows;
    }

    private static Row row(KnownCheck check) {
        boolean out = check.shutOut().isPresent();
        return new Row(check.name(), check.origin().words(), out ? "shut out until the next start" : "ready",
                String.join("\n", CheckText.lines(check)), out ? check.name() : "");
    }

    private Row selected() {
        return table.getStructuredSelection().getFirstElement() instanceof Row row ? row : new Row("", "", "", "", "");
    }

    private void refresh() {
        if (!table.getTable().isDisposed()) {
            table.setInput(rows(guests));
            if (table.getStructuredSelection().isEmpty() && table.getTable().getItemCount() > 0) {
                table.getTable().select(0);
            }
            show();
        }
    }

    private void show() {
        words.setText(table.getTable().getItemCount() == 0 ? "No checks of others are at hand." : selected().words());
        letIn.setEnabled(!selected().shut().isEmpty());
    }

    private void openFolder() {
        Path folder = ChecksFolder.path();
        try {
            Files.createDirectories(folder);
            Program.launch(folder.toString());
        } catch (IOException refused) {
            setErrorMessage("The folder cannot be made: " + refused.getMessage());
        }
    }

    @Override
    public void dispose() {
        noMore.run();
        super.dispose();
    }
}
