package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.cantonment.editor.text.LanguageEditor;
import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.check.FindingMarkers;
import org.cantonment.workbench.findings.FindingRow;
import org.cantonment.workbench.findings.FindingsView;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.driver.Widgets;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The view of everything that was found. */
class FindingsViewTest {

    private Campaign campaign;
    private FindingsView view;

    @BeforeEach
    void spoil() throws PartInitException {
        campaign = Campaign.anew();
        view = (FindingsView) Campaign.page().showView(FindingsView.ID);
        words().setText("");
        Screen.until("nothing found", () -> view.rows().isEmpty());
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout")
                .replace("2 Crank-Troop", "2 crank-troop"));
        campaign.write("brack-4.list", "list by Brack round 4\nNo-Such-Unit\n");
        Screen.until("three findings", () -> view.rows().size() == 3);
    }

    @AfterEach
    void showAllAgain() {
        words().setText("");
        for (Button button : Widgets.all(Button.class, window(), found -> (found.getStyle() & SWT.TOGGLE) != 0)) {
            button.setSelection(true);
            button.notifyListeners(SWT.Selection, new Event());
        }
    }

    private Shell window() {
        return view.getSite().getShell();
    }

    private Text words() {
        return Widgets.first(Text.class, window(), text -> text.getMessage().startsWith("Words"));
    }

    private Table table() {
        return Widgets.first(Table.class, window(),
                table -> table.getColumnCount() > 1 && table.getColumn(1).getText().equals("Finding"));
    }

    @Test
    void closedBooksAreShownGravestFirst() {
        List<FindingRow> rows = view.rows();
        assertEquals(List.of("Breach", "Breach", "Note"),
                rows.stream().map(row -> row.severity().word()).toList());
        assertEquals(List.of("brack-4.list", "ombra-4.list", "ombra-4.list"),
                rows.stream().map(FindingRow::fileLabel).toList());
        assertEquals(List.of(2, 7, 6), rows.stream().map(FindingRow::line).toList());
    }

    @Test
    void anOpenBookIsShownAsItIsNow() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scout");
        list.type("s");
        Screen.until("the breach is gone although nothing is saved", () -> view.rows().size() == 2);
        Campaign.page().closeAllEditors(false);
        Screen.until("the disk counts again", () -> view.rows().size() == 3);
    }

    @Test
    void wordsAndSeveritiesNarrowTheView() {
        words().setText("ombra breach");
        Screen.until("one row", () -> view.rows().size() == 1);
        assertTrue(view.rows().get(0).message().contains("Marsh-Scout"));
        words().setText("");
        Screen.until("all again", () -> view.rows().size() == 3);
        Button breaches = Widgets.first(Button.class, window(), button -> button.getText().endsWith("Breaches"));
        assertEquals("2 Breaches", breaches.getText());
        breaches.setSelection(false);
        breaches.notifyListeners(SWT.Selection, new Event());
        Screen.until("notes alone", () -> view.rows().size() == 1);
        assertEquals("Note", view.rows().get(0).severity().word());
        assertEquals("2 Breaches, hidden", breaches.getText());
        breaches.setSelection(true);
        breaches.notifyListeners(SWT.Selection, new Event());
        Screen.until("all again", () -> view.rows().size() == 3);
    }

    @Test
    void selectingAllMeansTheWordsWhileTheyAreTyped() {
        var selectAll = view.getViewSite().getActionBars().getGlobalActionHandler("selectAll");
        words().setText("ombra");
        words().setFocus();
        selectAll.run();
        assertEquals("ombra", words().getSelectionText());
        words().setText("");
        Screen.until("all again", () -> view.rows().size() == 3);
        table().setFocus();
        selectAll.run();
        assertEquals(3, table().getSelectionCount());
    }

    @Test
    void aThemeCanChangeAfterTheTableHasShrunk() {
        words().setText("Note");
        Screen.until("one row", () -> view.rows().size() == 1);
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        engine.setTheme(ThemeHandler.DARK, false);
        Screen.idle();
        engine.setTheme(ThemeHandler.LIGHT, false);
        Screen.idle();
        words().setText("");
        Screen.until("all again", () -> view.rows().size() == 3);
        assertEquals(3, table().getItemCount());
    }

    @Test
    void aColumnHeadSortsAndSortsTheOtherWay() {
        table().getColumn(4).notifyListeners(SWT.Selection, new Event());
        Screen.until("by line", () -> lines().equals(List.of(2, 6, 7)));
        table().getColumn(4).notifyListeners(SWT.Selection, new Event());
        Screen.until("by line, last first", () -> lines().equals(List.of(7, 6, 2)));
        table().getColumn(0).notifyListeners(SWT.Selection, new Event());
        Screen.until("by severity again", () -> lines().equals(List.of(2, 7, 6)));
    }

    private List<Integer> lines() {
        return view.rows().stream().map(FindingRow::line).toList();
    }

    @Test
    void enterGoesToThePlace() {
        table().setSelection(1);
        table().notifyListeners(SWT.DefaultSelection, new Event());
        LanguageEditor editor = (LanguageEditor) Screen.the("an editor",
                () -> Campaign.page().getActiveEditor());
        assertEquals("ombra-4.list", editor.getEditorInput().getName());
        assertEquals("Marsh-Scout", ((ITextSelection) editor.getSelectionProvider().getSelection()).getText());
    }

    @Test
    void theRuleIsNamedWithItsLineAndCanBeVisited() {
        campaign.write("brack-4.list", Campaign.LIST.replace("by Ombra", "by Brack").replace("  . Command: Staff\n", ""));
        FindingRow row = Screen.the("the empty billet is found", () -> view.rows().stream()
                .filter(one -> one.rule().isPlaced()).findFirst().orElse(null));
        long line = Campaign.RULES.substring(0, Campaign.RULES.indexOf("billet Command")).lines().count();
        assertEquals("Lake-Book/Causey-Squadron, line " + line, row.rule().label());
        table().setSelection(view.rows().indexOf(row));
        MenuItem visit = item("Go to the rule");
        visit.notifyListeners(SWT.Selection, new Event());
        LanguageEditor rules = (LanguageEditor) Campaign.page().getActiveEditor();
        assertEquals("lake.rules", rules.getEditorInput().getName());
        assertEquals("  . billet Command 1 of Staff",
                ((ITextSelection) rules.getSelectionProvider().getSelection()).getText());
    }

    private MenuItem item(String label) {
        Menu menu = table().getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        return Arrays.stream(menu.getItems()).filter(item -> item.getText().equals(label)).findFirst().orElseThrow();
    }

    @Test
    void whatIsSelectedCanBeCopied() {
        Campaign.page().activate(view);
        table().setSelection(0, 1);
        view.getViewSite().getActionBars().getGlobalActionHandler("copy").run();
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        List<String> copiedLines = copied.lines().toList();
        assertEquals(2, copiedLines.size());
        assertTrue(copiedLines.get(0).startsWith("Breach\t"), copied);
        assertTrue(copiedLines.get(0).endsWith("\tbrack-4.list\t2"), copied);
    }

    @Test
    void markersThatStillHoldAreLeftAlone() throws CoreException {
        long[] before = markers();
        assertEquals(3, before.length);
        campaign.project().build(IncrementalProjectBuilder.FULL_BUILD, null);
        Screen.idle();
        assertEquals(Arrays.toString(before), Arrays.toString(markers()));
        campaign.write("brack-4.list", Campaign.LIST.replace("by Ombra", "by Brack"));
        Screen.until("one finding less", () -> view.rows().size() == 2);
        assertEquals(2, markers().length);
        assertTrue(Arrays.stream(markers()).allMatch(id -> Arrays.stream(before).anyMatch(old -> old == id)));
    }

    private long[] markers() throws CoreException {
        IMarker[] markers = campaign.project().findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE);
        return Arrays.stream(markers).mapToLong(IMarker::getId).sorted().toArray();
    }
}
