package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.editor.text.LanguageEditor;
import org.cantonment.workbench.ThemeHandler;
import org.cantonment.workbench.adopting.AdoptingView;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.driver.Widgets;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The view of what adopting a book would do. */
class AdoptingViewTest {

    private static final String WINTER = """
            rules Winter "Winter" over Lake-Book in rounds 1 to 4
            limit Few-Cranks "Few cranks"
              . at most 1 of Crank-Troop
            change Tread-Troop
              . strength 5 for 38 points
            """;

    private Campaign campaign;
    private AdoptingView view;

    @BeforeEach
    void write() throws PartInitException {
        campaign = Campaign.anew();
        campaign.write("brack-4.list", Campaign.LIST.replace("by Ombra", "by Brack").replace("2 Crank", "1 Crank"));
        view = (AdoptingView) Campaign.page().showView(AdoptingView.ID);
    }

    @AfterEach
    void backToLight() {
        theme(ThemeHandler.LIGHT);
    }

    private static void theme(String id) {
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(id, true);
        Screen.idle();
    }

    private void look(OpenBook rules, String group) {
        rules.run("org.cantonment.workbench.adopting");
        Screen.until("there is a group " + group, () -> groups().contains(group));
    }

    private List<String> groups() {
        return view.rows().stream().map(row -> row.cell(0)).toList();
    }

    private String text() {
        return view.rows().stream().map(AnswerNode::asText).collect(Collectors.joining("\n"));
    }

    private Button button(String label) {
        return Widgets.first(Button.class, view.getSite().getShell(), button -> button.getText().equals(label));
    }

    private Tree tree() {
        return Widgets.first(Tree.class, view.getSite().getShell(),
                tree -> tree.getColumnCount() > 0 && tree.getColumn(0).getText().equals("List"));
    }

    @Test
    void aLayerThatNobodyPlaysYetIsTriedAndThenPlayed() {
        campaign.write("winter.rules", WINTER);
        look(campaign.open("winter.rules"), "Not legal any more (1)");
        assertEquals("Winter: to be played by The Heron season.", view.heading());
        assertTrue(text().contains("Ombra, round 4\t102 to 100 points\tombra-4.list"), text());
        assertTrue(text().contains("Now: Few cranks (Winter): at most 1 of Crank troop"), text());
        // Brack has but one line unit less than he must: a breach before and after it, and two points cheaper
        assertEquals(List.of("Not legal any more (1)", "Another total (1)", "Unchanged (0)"), groups());
        Screen.picture("adopting-light");
        button("&Play it").notifyListeners(SWT.Selection, new Event());
        LanguageEditor editor = (LanguageEditor) Campaign.page().getActiveEditor();
        assertEquals("heron.campaign", editor.getEditorInput().getName());
        assertEquals(Campaign.SEASON.replace("plays Lake-Book", "plays Lake-Book, Winter"), editor.document().get());
        theme(ThemeHandler.DARK);
        Screen.picture("adopting-dark");
    }

    @Test
    void whatIsNotSavedStandsAgainstWhatIs() {
        OpenBook rules = campaign.open("lake.rules");
        rules.select("for 20 points");
        rules.type("f");
        rules.editor().document().set(Campaign.RULES.replace("for 20 points", "for 31 points"));
        look(rules, "Not legal any more (1)");
        assertEquals("The Lake Book: the new text instead of the present one.", view.heading());
        assertTrue(text().contains("Ombra, round 4\t102 to 124 points"), text());
        assertTrue(text().contains("Brack, round 4\t82 to 93 points"), text());
        assertFalse(button("&Play it").isEnabled());
        tree().setSelection(tree().getItem(0).getItem(0));
        tree().notifyListeners(SWT.DefaultSelection, new Event());
        assertEquals("ombra-4.list", Campaign.page().getActiveEditor().getEditorInput().getName());
    }

    @Test
    void whoLooksAgainSeesWhatIsSavedByThen() {
        campaign.write("winter.rules", WINTER);
        look(campaign.open("winter.rules"), "Not legal any more (1)");
        campaign.write("ombra-4.list", Campaign.LIST.replace("2 Crank", "1 Crank"));
        button("Look aga&in").notifyListeners(SWT.Selection, new Event());
        Screen.until("two lists get cheaper and none is a breach", () -> groups().equals(
                List.of("Another total (2)", "Unchanged (0)")));
        campaign.write("winter.rules", WINTER.replace("at most 1", "at most 0"));
        Screen.idle();
        button("Look aga&in").notifyListeners(SWT.Selection, new Event());
        Screen.until("both are breaches", () -> groups().equals(List.of("Not legal any more (2)", "Unchanged (0)")));
    }

    @Test
    void whatIsPlayedAsItStandsSaysSo() {
        campaign.open("lake.rules").run("org.cantonment.workbench.adopting");
        Screen.until("there is nothing to adopt", () -> view.heading().contains("is played already"));
        assertTrue(view.rows().isEmpty());
    }
}
