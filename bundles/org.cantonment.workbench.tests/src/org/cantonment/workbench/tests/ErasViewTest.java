package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.eras.ErasView;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.Contrast;
import org.cantonment.workbench.tests.driver.Letters;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.driver.Widgets;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** The view of eras. The squadron, its prices and its least changes were worked out by hand. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ErasViewTest {

    private static final String RULES = """
            rules Lake-Book "The Lake Book"

            era Reed-Year "The Reed Year"
            era Dyke-War "The Dyke War" after Reed-Year
            era Long-Thaw "The Long Thaw" after Dyke-War

            unit Staff "Staff"
              . strength 1 for 10 points
              . strength 1 for 12 points from Long-Thaw
            unit Tread-Troop "Tread troop"
              . strength 3 for 24 points
              . strength 5 for 40 points
              . strength 3 for 27 points from Long-Thaw
              . strength 5 for 45 points from Long-Thaw
            unit Crank-Troop "Crank troop"
              . strength 4 for 20 points
              . available to Dyke-War
              . becomes Pike-Car-Troop from Long-Thaw
            unit Pike-Car-Troop "Pike car troop"
              . strength 4 for 26 points
              . available from Dyke-War
            unit Marsh-Scouts "Marsh scouts"
              . strength 1 for 8 points
              . available from Dyke-War
            formation Causey-Squadron "Causey squadron"
              . billet Command 1 of Staff
              . billet Line 2 to 3 of Tread-Troop, Crank-Troop, Pike-Car-Troop
              . billet Scouts 0 to 1 of Marsh-Scouts
            """;
    private static final String LIST = """
            list by Ombra round 4
            Causey-Squadron
              . Staff
              . Tread-Troop of 5
              . Crank-Troop
              . Crank-Troop
              . Marsh-Scouts
            """;

    private Campaign campaign;
    private ErasView view;
    private OpenBook list;

    @BeforeEach
    void open() throws PartInitException {
        campaign = Campaign.anew();
        campaign.write("lake.rules", RULES);
        campaign.write("heron.campaign", Campaign.SEASON.replace("limit 120", "limit 100"));
        campaign.write("ombra-4.list", LIST);
        view = (ErasView) Campaign.page().showView(ErasView.ID);
        list = campaign.open("ombra-4.list");
        Screen.until("three eras", () -> view.rows().size() == 3);
    }

    @AfterEach
    void backToLight() {
        theme(ThemeHandler.LIGHT);
    }

    private static void theme(String id) {
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(id, true);
        Screen.idle();
    }

    private Tree tree() {
        return Widgets.first(Tree.class, view.getSite().getShell(),
                tree -> tree.getColumnCount() > 0 && tree.getColumn(0).getText().equals("Era"));
    }

    private Button button(String label) {
        return Widgets.first(Button.class, view.getSite().getShell(), button -> button.getText().equals(label));
    }

    private void press(String label) {
        assertTrue(button(label).isEnabled(), label);
        button(label).notifyListeners(SWT.Selection, new Event());
    }

    private void select(int era, String beginning) {
        TreeItem item = Arrays.stream(tree().getItem(era).getItems()).filter(one -> one.getText().startsWith(beginning))
                .findFirst().orElseThrow(() -> new AssertionError(view.rows().get(era).asText()));
        tree().setSelection(item);
        tree().notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void everyEraHasItsVerdictAndOpensIntoWhatIsToBeDone() {
        assertEquals(List.of("The Reed Year", "Not legal", "98 of 100 points", "8 points, 1 unit", "Marsh scouts out"),
                view.rows().get(0).cells());
        assertEquals(List.of("The Dyke War, as written", "Legal", "98 of 100 points", "", ""), view.rows().get(1).cells());
        AnswerNode thaw = view.rows().get(2);
        assertEquals(List.of("The Long Thaw", "Not legal", "105 of 100 points"), thaw.cells().subList(0, 3));
        assertTrue(thaw.asText().contains("Least change\tLegal\t91 of 100 points\t66 points, "), thaw.asText());
        assertTrue(thaw.asText().contains("Proven: nothing moves less."), thaw.asText());
    }

    @Test
    void aChangeIsMadeInTheTextAndUndoneAtOnce() {
        assertFalse(button("&Make this change").isEnabled());
        select(0, "Least change");
        press("&Make this change");
        assertEquals(LIST.replace("  . Marsh-Scouts\n", ""), list.text());
        Screen.until("legal in the Reed Year", () -> view.rows().get(0).cell(1).equals("Legal"));
        list.undo();
        assertEquals(LIST, list.text());
        Screen.until("not legal again", () -> view.rows().get(0).cell(1).equals("Not legal"));
    }

    @Test
    void whatIsTypedIsLookedAtAsItIs() {
        list.select("  . Marsh-Scouts\n");
        list.backspace();
        Screen.until("legal in the Reed Year", () -> view.rows().get(0).cell(1).equals("Legal"));
    }

    @Test
    void theNextBestIsShownOnRequest() {
        press("Next &best");
        Screen.until("a second change", () -> view.rows().get(2).asText()
                .contains("Next best\tLegal\t92 of 100 points\t67 points, "));
        select(2, "Next best");
        press("&Make this change");
        assertTrue(list.text().contains("Tread-Troop of 3"), list.text());
        assertFalse(list.text().contains("Crank"), list.text());
        Screen.until("legal in the Thaw", () -> view.rows().get(2).cell(1).equals("Legal"));
        assertEquals("92 of 100 points", view.rows().get(2).cell(2));
    }

    @Test
    void aShelfIsReckonedWithAndLookedAtByItself() {
        campaign.write("works.range", "range Works in EUR\npiece Wagon\npiece Car\n");
        campaign.write("lake.rules", RULES.replace("unit Tread-Troop \"Tread troop\"\n",
                "unit Tread-Troop \"Tread troop\"\n  . each needs Wagon\n")
                .replace("unit Pike-Car-Troop \"Pike car troop\"\n",
                        "unit Pike-Car-Troop \"Pike car troop\"\n  . each needs Car\n"));
        campaign.write("ombra.shelf", "shelf of Ombra in EUR on 2031-03-01\n8 Wagon\n");
        Screen.until("a change with what Ombra owns", () -> view.rows().size() == 3 && view.rows().get(2).asText()
                .contains("With what Ombra owns\tLegal\t92 of 100 points\t67 points, "));
        campaign.open("ombra.shelf");
        Screen.until("the shelf in three eras", () -> view.rows().size() == 3
                && view.rows().get(2).cells().equals(List.of("The Long Thaw", "72 points", "8 pieces", "",
                        "Tread troop of 3, Tread troop of 5")));
        assertEquals("What can be fielded", tree().getColumn(4).getText());
        assertFalse(button("Next &best").isEnabled());
        Screen.picture("eras-shelf");
    }

    @Test
    void theReplyCanBePastedIntoAChat() {
        press("Copy a &reply");
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertTrue(copied.length() < 500 && copied.contains("The Long Thaw: not yet.")
                && copied.contains("(91 of 100)"), copied);
    }

    @Test
    void withoutAListThereIsAWordOfWhatToDo() {
        Campaign.page().closeAllEditors(false);
        Screen.until("nothing is shown", () -> view.rows().isEmpty());
    }

    @Order(Integer.MAX_VALUE)
    @Test
    void byDayAndByNight() {
        select(2, "Least change");
        tree().getItem(2).getItem(1).setExpanded(true);
        Screen.picture("eras-light");
        theme(ThemeHandler.DARK);
        Screen.picture("eras-dark");
        theme(ThemeHandler.LIGHT);
        Screen.picture("eras-light-again");
        assertEquals(List.of(), Letters.inTheWindow().stream().filter(seen -> seen.contrast() < Contrast.LEAST).toList());
        assertEquals(3, tree().getItemCount());
    }
}
