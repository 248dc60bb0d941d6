package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.text.LanguageEditor;
import org.cantonment.editor.text.LanguageOutline;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Finding one's way: outline, definitions, uses of a name. */
class NavigationTest {

    private Campaign campaign;

    @BeforeEach
    void writeAnew() {
        campaign = Campaign.anew();
    }

    @Test
    void theOutlineFollowsTheText() {
        OpenBook list = campaign.open("ombra-4.list");
        LanguageOutline outline = (LanguageOutline) list.editor().getAdapter(IContentOutlinePage.class);
        Screen.until("the outline shows the list", () -> !outline.shown().isEmpty());
        OutlineNode squadron = outline.shown().get(0).children().get(0);
        assertEquals("Causey-Squadron as Herons", squadron.label());
        assertEquals("The Herons", squadron.detail());
        assertEquals(4, squadron.children().size());
        list.caretBehind("Marsh-Scouts");
        list.type("\nTread-Troop of 3");
        Screen.until("the outline has the whole line", () -> outline.shown().get(0).children().get(0).children()
                .stream().map(OutlineNode::label).toList()
                .equals(List.of("Command: Staff", "Tread-Troop of 5, 2 Long-Guns as Reds", "2 Crank-Troop of 4",
                        "Marsh-Scouts", "Tread-Troop of 3")));
    }

    @Test
    void aNameLeadsToWhereItIsGiven() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("2 Crank");
        list.run("org.cantonment.editor.definition");
        LanguageEditor rules = (LanguageEditor) Campaign.page().getActiveEditor();
        assertEquals("lake.rules", rules.getEditorInput().getName());
        ITextSelection selection = (ITextSelection) rules.getSelectionProvider().getSelection();
        assertEquals("Crank-Troop", selection.getText());
        assertEquals(Campaign.RULES.indexOf("unit Crank-Troop") + "unit ".length(), selection.getOffset());
    }

    @Test
    void aNameLeadsToWhereItIsGivenNowAlthoughTheOtherBookIsNotSaved() {
        OpenBook list = campaign.open("ombra-4.list");
        OpenBook rules = campaign.open("lake.rules");
        rules.caretBehind("\"The Lake Book\"");
        rules.type("\n  . note \"Three lines above all else.\"");
        Screen.idle();
        list.editor().getSite().getPage().activate(list.editor());
        list.model().renewLinks();
        Screen.idle();
        list.caretBehind("2 Crank");
        list.run("org.cantonment.editor.definition");
        assertEquals("Crank-Troop",
                ((ITextSelection) rules.editor().getSelectionProvider().getSelection()).getText());
    }

    @Test
    void theUsesOfTheNameUnderTheCaretAreMarked() {
        OpenBook rules = campaign.open("lake.rules");
        rules.caretBehind("kind Arm");
        Screen.until("the uses are marked", () -> rules.marked("org.cantonment.editor.occurrence").size() == 3);
        assertEquals(List.of("Armour", "Armour", "Armour"), rules.marked("org.cantonment.editor.occurrence"));
        rules.caretBehind("rules Lake");
        Screen.until("nothing is marked", () -> rules.marked("org.cantonment.editor.occurrence").isEmpty());
    }

    @Test
    void theSnapshotKnowsWhereEveryUseLeads() {
        OpenBook list = campaign.open("ombra-4.list");
        int use = list.find("Long-Guns");
        assertTrue(list.model().snapshot().linkAt(use + 1).isPresent());
        assertEquals(Campaign.RULES.indexOf("Long-Guns"),
                list.model().snapshot().linkAt(use + 1).get().target().offset());
    }
}
