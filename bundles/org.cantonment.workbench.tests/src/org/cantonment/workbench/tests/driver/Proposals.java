package org.cantonment.workbench.tests.driver;

import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** What completion offers: a table in a window of its own. */
public final class Proposals {

    private Proposals() {
    }

    private static Table popup() {
        Shell main = Campaign.page().getWorkbenchWindow().getShell();
        for (Shell shell : Display.getCurrent().getShells()) {
            Table table = shell == main || !shell.isVisible() ? null : Widgets.search(Table.class, shell, found -> true);
            if (table != null) {
                return table;
            }
        }
        return null;
    }

    /** What is offered now. */
    public static List<String> shown() {
        Table table = popup();
        return table == null ? List.of() : Arrays.stream(table.getItems()).map(TableItem::getText).toList();
    }

    /**
     * Takes what is offered.
     *
     * @param beginning how it begins; it must be there
     */
    public static void take(String beginning) {
        Table table = popup();
        int index = table.indexOf(Arrays.stream(table.getItems()).filter(item -> item.getText().startsWith(beginning))
                .findFirst().orElseThrow());
        table.setSelection(index);
        table.notifyListeners(SWT.Selection, event(table, index));
        table.notifyListeners(SWT.DefaultSelection, event(table, index));
    }

    private static Event event(Table table, int index) {
        Event event = new Event();
        event.item = table.getItem(index);
        return event;
    }

    /**
     * Takes what alone is offered, if anything is. What is found at once the editor takes itself; on a busy machine it
     * shows it first.
     *
     * @param beginning how it begins
     */
    public static void takeAlone(String beginning) {
        List<String> all = shown();
        if (all.size() == 1 && all.get(0).startsWith(beginning)) {
            take(beginning);
        }
    }

    /** Closes the table, if there is one. */
    public static void close() {
        Table table = popup();
        if (table != null) {
            table.getShell().close();
        }
    }
}
