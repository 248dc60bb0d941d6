package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.text.FixAssist;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.OpenBook.Mark;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What happens in the text while somebody types. */
class EditingTest {

    private Campaign campaign;

    @BeforeEach
    void writeAnew() {
        campaign = Campaign.anew();
    }

    @Test
    void aListInOrderHasNoMark() {
        assertEquals(List.of(), campaign.open("ombra-4.list").marks());
    }

    @Test
    void aSlipIsMarkedWhereItStandsAndUndoTakesTheMarkAway() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Crank-Troop");
        list.type("s");
        Mark mark = Screen.the("the slip is marked", () -> list.marks().stream()
                .filter(one -> one.text().equals("Crank-Troops")).findFirst().orElse(null));
        assertEquals("breach", mark.severity());
        assertEquals(list.find("Crank-Troops"), mark.offset());
        list.undo();
        Screen.until("the mark is gone", () -> list.marks().isEmpty());
        assertEquals(Campaign.LIST, list.text());
    }

    @Test
    void aMarkMovesWithItsText() {
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout"));
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("the slip is marked", () -> list.marks().size() == 1);
        list.caretBehind("list by");
        list.type("  ");
        assertEquals("Marsh-Scout", list.marks().get(0).text(), "before the worker has looked at it again");
        Screen.idle();
        assertEquals("Marsh-Scout", list.marks().get(0).text());
    }

    @Test
    void aFixIsOfferedAppliedAndUndone() {
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout"));
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("the slip is marked", () -> list.marks().size() == 1);
        String broken = list.text();
        List<ICompletionProposal> offers = FixAssist.offers(list.editor().document(),
                list.editor().viewer().getAnnotationModel(), list.find("Marsh-Scout"));
        assertEquals("Write Marsh-Scouts", offers.get(0).getDisplayString());
        offers.get(0).apply(list.editor().document());
        Screen.until("the mark is gone", () -> list.marks().isEmpty());
        assertEquals(Campaign.LIST, list.text());
        list.undo();
        assertEquals(broken, list.text());
    }

    @Test
    void aFixThatNoLongerFitsChangesNothing() {
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout"));
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("the slip is marked", () -> list.marks().size() == 1);
        List<ICompletionProposal> offers = FixAssist.offers(list.editor().document(),
                list.editor().viewer().getAnnotationModel(), list.find("Marsh-Scout"));
        list.caretBehind("Marsh-S");
        list.backspace();
        String edited = list.text();
        offers.get(0).apply(list.editor().document());
        assertEquals(edited, list.text());
    }

    @Test
    void aNameChangedInOneBookIsMissedInAnotherAtOnce() {
        OpenBook list = campaign.open("ombra-4.list");
        OpenBook rules = campaign.open("lake.rules");
        rules.caretBehind("unit Crank-Troop");
        rules.type("er");
        Screen.until("the list misses the name", () -> list.marks().stream()
                .anyMatch(mark -> mark.text().equals("Crank-Troop") && mark.severity().equals("breach")));
        rules.undo();
        Screen.until("the list has the name again", () -> list.marks().isEmpty());
    }

    @Test
    void aBookChangedOnTheDiskIsSeenByTheOpenOnes() {
        OpenBook list = campaign.open("ombra-4.list");
        campaign.write("lake.rules", Campaign.RULES.replace("unit Crank-Troop", "unit Crank-Band"));
        Screen.until("the list misses the name",
                () -> list.marks().stream().anyMatch(mark -> mark.text().equals("Crank-Troop")));
        campaign.write("lake.rules", Campaign.RULES);
        Screen.until("the list has the name again", () -> list.marks().isEmpty());
    }

    @Test
    void theRulesAreHeldAgainstTheListWhileItIsTyped() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scouts");
        list.type("\nTread-Troop of 3");
        Mark mark = Screen.the("the limit is passed", () -> list.marks().stream()
                .filter(one -> one.message().contains("120")).findFirst().orElse(null));
        assertEquals("breach", mark.severity());
        list.caretBehind("Tread-Troop of 3");
        for (int i = "\n  . Tread-Troop of 3".length(); i > 0; i--) {
            list.backspace();
        }
        Screen.until("the list is legal again", () -> list.marks().isEmpty());
    }

    @Test
    void closingDropsTheModel() {
        OpenBook list = campaign.open("ombra-4.list");
        assertTrue(list.editor().model().isPresent());
        Campaign.page().closeAllEditors(false);
        Screen.until("the model is dropped", () -> DocumentModels.all().open().isEmpty());
    }
}
