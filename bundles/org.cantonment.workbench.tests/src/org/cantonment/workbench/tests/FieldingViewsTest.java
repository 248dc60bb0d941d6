package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.fielding.ReachView;
import org.cantonment.workbench.fielding.TurnoutView;
import org.cantonment.workbench.findings.FindingsView;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.driver.Widgets;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The views of turnout and reach. Who stands where was worked out by hand. */
class FieldingViewsTest {

    private static final String RANGE = """
            range Works in EUR
            family Guns "Guns"
            piece Gun-Wagon "Gun wagon" in Guns
            piece Long-Wagon "Long wagon" in Guns
            piece Scout-Cart "Scout cart"
            piece Marsh-Foot "Marsh foot"
            box Carts "Two carts"
              . 2 Scout-Cart
              . price 9.00 from 2031-01-01
            """;
    private static final String RULES = """
            rules Lake-Book "The Lake Book"
            era Dyke-War "The Dyke War"
            unit Gun-Troop "Gun troop"
              . strength 4 for 20 points
              . each needs Gun-Wagon
            unit Survey "Survey"
              . strength 3 for 9 points
              . each needs Scout-Cart
            formation Column "Column"
              . billet Line 1 of Gun-Troop
              . billet Eyes 0 to 1 of Survey
            likeness Club-Table
              . allows kindred
              . lets Gun-Wagon stand for Scout-Cart
            """;
    private static final String LIST = """
            list by Ombra round 4
            Column
              . Gun-Troop
              . Survey
            """;
    private static final String SHELF = "shelf of Ombra in EUR on 2031-03-01\n3 Gun-Wagon\n2 Long-Wagon\nScout-Cart\n";

    private Campaign campaign;
    private TurnoutView turnout;

    @BeforeEach
    void open() throws PartInitException {
        campaign = Campaign.anew();
        campaign.write("works.range", RANGE);
        campaign.write("lake.rules", RULES);
        campaign.write("heron.campaign", Campaign.SEASON);
        campaign.write("ombra.shelf", SHELF);
        campaign.write("ombra-4.list", LIST);
        turnout = (TurnoutView) Campaign.page().showView(TurnoutView.ID);
    }

    @AfterEach
    void backToLight() {
        theme(ThemeHandler.LIGHT);
    }

    private static void theme(String id) {
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(id, true);
        Screen.idle();
    }

    private OpenBook openList() {
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("who stands where", () -> turnout.rows().size() >= 2);
        return list;
    }

    @Test
    void behindAnotherTabNothingIsReckonedAndThenWhatIsTrueIsShown() throws PartInitException {
        OpenBook list = openList();
        FindingsView findings = (FindingsView) Campaign.page().showView(FindingsView.ID);
        Screen.until("the turnout is out of sight", () -> !Campaign.page().isPartVisible(turnout));
        list.caretBehind(". Survey");
        list.type("or");
        Screen.until("nobody knows a Surveyor", () -> findings.rows().stream().anyMatch(row -> row.message().contains("Surveyor")));
        assertEquals(0, Job.getJobManager().find(TurnoutView.ID).length);
        assertEquals("Survey", turnout.rows().get(1).cells().get(0));
        Campaign.page().showView(TurnoutView.ID);
        Screen.until("the survey is gone", () -> turnout.rows().stream().noneMatch(row -> row.cells().get(0).equals("Survey")));
        assertEquals("4 of 4", turnout.rows().get(0).cells().get(1));
    }

    @Test
    void eachNeedHasWhoFillsItAndHowTrueThatIs() {
        openList();
        assertEquals(List.of("Gun troop", "4 of 4", "2 Gun wagon, 2 Long wagon", "\u25d0 kindred", ""),
                turnout.rows().get(0).cells());
        assertEquals(List.of("Survey", "2 of 3", "1 Scout cart, 1 Gun wagon", "\u25cb stand-in", "1 short"),
                turnout.rows().get(1).cells());
        assertTrue(turnout.rows().get(1).sign().isPresent());
        assertTrue(turnout.rows().get(2).asText().contains("Gun troop and Survey together need 7; all that may stand for them"
                + " is 6: 3 Gun wagon, 2 Long wagon and 1 Scout cart. Short by 1."), turnout.rows().get(2).asText());
        assertEquals("Ombra, round 4: 6 of 7 pieces stand, 1 short", turnout.heading().split(",? with")[0].replace(".", ""));
    }

    @Test
    void whatClosesItAtLeastCostIsTold() {
        campaign.write("works.range", RANGE + "box Cart-Box \"One cart\"\n  . Scout-Cart\n  . price 4.50\n");
        openList();
        Screen.until("what closes it", () -> turnout.rows().stream().anyMatch(row -> row.asText().contains("4.50 EUR")));
        assertTrue(turnout.rows().get(3).asText().contains("At least cost: 4.50 EUR, 1 One cart from Works; by prices of 2031-03-"),
                turnout.rows().get(3).asText());
        Screen.picture("turnout-closing");
    }

    @Test
    void whatIsTypedIsLookedAtAsItIs() {
        OpenBook list = openList();
        list.select("  . Survey\n");
        list.backspace();
        Screen.until("nothing is short", () -> turnout.rows().size() == 1
                && turnout.rows().get(0).cells().get(2).equals("3 Gun wagon, 1 Long wagon"));
    }

    @Test
    void theReplyCanBePastedIntoAChat() {
        openList();
        Button reply = Widgets.first(Button.class, turnout.getSite().getShell(),
                button -> button.getText().equals("Copy a &reply") && button.isVisible());
        reply.notifyListeners(SWT.Selection, new Event());
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertTrue(copied.length() < 500 && copied.contains("1 of 7 pieces short"), copied);
    }

    @Test
    void reachIsToldOfTheShelfThatIsEdited() throws PartInitException {
        ReachView reach = (ReachView) Campaign.page().showView(ReachView.ID);
        campaign.open("ombra.shelf");
        Screen.until("one formation", () -> reach.rows().size() == 1);
        assertEquals(List.of("Column", "The Dyke War", "now", "1 piece away"), reach.rows().get(0).cells().subList(0, 4));
        assertTrue(reach.rows().get(0).asText().contains("missing: 1 "), reach.rows().get(0).asText());
        Screen.until("money", () -> reach.rows().get(0).asText().contains("For 9.00 EUR: 1 Two carts."));
        Screen.picture("reach-light");
        theme(ThemeHandler.DARK);
        Screen.picture("reach-dark");
    }

    @Test
    void theOtherSideOfReachIsWhatBoxesOpen() throws PartInitException {
        ReachView reach = (ReachView) Campaign.page().showView(ReachView.ID);
        campaign.open("ombra.shelf");
        Button side = Widgets.first(Button.class, reach.getSite().getShell(),
                button -> button.getText().equals("Show &boxes") && button.isVisible());
        Screen.until("boxes were looked into", side::isEnabled);
        side.notifyListeners(SWT.Selection, new Event());
        assertEquals(List.of("Two carts", "Carts", "1", "9.00 EUR", "Works", "Column, at most: The Dyke War"),
                reach.rows().get(0).cells());
        assertTrue(reach.heading().contains("1 of 1 boxes on sale brings more within reach by itself"), reach.heading());
        assertEquals("Show &formations", side.getText());
        Screen.idle();
        Screen.picture("reach-boxes-light");
        side.notifyListeners(SWT.Selection, new Event());
        assertEquals("Column", reach.rows().get(0).cell(0));
    }

    @Test
    void withoutAListThereIsAWordOfWhatToDo() {
        openList();
        Campaign.page().closeAllEditors(false);
        Screen.until("nothing is shown", () -> turnout.rows().isEmpty());
        assertTrue(turnout.heading().startsWith("Open a list"), turnout.heading());
    }

    @Test
    void byDayAndByNight() {
        openList();
        Tree tree = Widgets.first(Tree.class, turnout.getSite().getShell(),
                one -> one.getColumnCount() > 0 && one.getColumn(0).getText().equals("Need"));
        Screen.picture("turnout-light");
        theme(ThemeHandler.DARK);
        Screen.picture("turnout-dark");
        assertEquals(turnout.rows().size(), tree.getItemCount());
    }
}
