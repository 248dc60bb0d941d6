package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CompletableFuture;

import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Proposals;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.ISourceViewer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Completion, hover, layout. */
class HelpWhileTypingTest {

    private Campaign campaign;

    @BeforeEach
    void writeAnew() {
        campaign = Campaign.anew();
    }

    @AfterEach
    void closePopup() {
        Proposals.close();
    }

    @Test
    void aNameIsProposedAndTaken() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scouts");
        list.type("\nTre");
        list.run("org.eclipse.ui.edit.text.contentAssist.proposals");
        Screen.until("the one proposal is put in", () -> {
            Proposals.takeAlone("Tread-Troop");
            return list.text().endsWith("  . Marsh-Scouts\n  . Tread-Troop\n");
        });
    }

    @Test
    void severalNamesAreShownToChooseFrom() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scouts");
        list.type("\n");
        list.run("org.eclipse.ui.edit.text.contentAssist.proposals");
        Screen.until("units are proposed", () -> Proposals.shown().stream().anyMatch(text -> text.startsWith("Crank-Troop")));
        assertTrue(Proposals.shown().stream().anyMatch(text -> text.equals("Crank-Troop  unit, Crank troop")),
                () -> Proposals.shown().toString());
        Screen.picture("completion");
        Proposals.take("Crank-Troop");
        Screen.until("the name is put in", () -> list.text().endsWith("  . Crank-Troop\n"));
    }

    @Test
    void enterCarriesTheDotsOnAndASecondEnterEndsThem() {
        OpenBook list = campaign.open("ombra-4.list");
        list.caretBehind("Marsh-Scouts");
        list.type("\n");
        assertEquals(Campaign.LIST + "  . \n", list.text());
        list.type("\n");
        assertEquals(Campaign.LIST + "\n", list.text());
        list.type("support\n");
        assertEquals(Campaign.LIST + "support\n\n", list.text());
    }

    @Test
    void theHoverSaysWhatANameStandsFor() {
        OpenBook list = campaign.open("ombra-4.list");
        List<String> lines = hover(list, "Crank-Troop").lines().toList();
        assertEquals("unit Crank-Troop \"Crank troop\"", lines.get(0));
        assertEquals("  . is Armour", lines.get(1));
        List<String> explained = hover(list, "Staff").lines().toList();
        assertEquals("Two in front, one behind.", explained.get(1));
    }

    @Test
    void theHoverSaysWhatWasFound() {
        campaign.write("ombra-4.list", Campaign.LIST.replace("Marsh-Scouts", "Marsh-Scout"));
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("the slip is marked", () -> !list.marks().isEmpty());
        String said = hover(list, "Marsh-Scout");
        assertTrue(said.startsWith("Breach: There is no unit or formation called 'Marsh-Scout'"), said);
        assertTrue(said.contains("Ctrl+1: Write Marsh-Scouts"), said);
    }

    /** The viewer asks on a thread of its own; so does this. */
    private static String hover(OpenBook book, String text) {
        ISourceViewer viewer = book.editor().viewer();
        int offset = book.find(text) + 1;
        CompletableFuture<String> answer = CompletableFuture
                .supplyAsync(() -> book.editor().hover().getHoverInfo(viewer, new Region(offset, 0)));
        Screen.until("the hover is there", answer::isDone);
        return answer.join();
    }

    @Test
    void linesAreLaidOutAndOneUndoTakesItBack() {
        String untidy = Campaign.LIST.replace("  . Command: Staff", ".Command: Staff")
                .replace("  . Marsh-Scouts", "      .   Marsh-Scouts");
        campaign.write("ombra-4.list", untidy);
        OpenBook list = campaign.open("ombra-4.list");
        list.run("org.cantonment.editor.layout");
        Screen.until("the lines are laid out", () -> list.text().equals(Campaign.LIST));
        list.undo();
        assertEquals(untidy, list.text());
    }

    @Test
    void onlyTheSelectedLinesAreLaidOut() {
        String untidy = Campaign.LIST.replace("  . Command: Staff", ".Command: Staff")
                .replace("  . Marsh-Scouts", "      .   Marsh-Scouts");
        campaign.write("ombra-4.list", untidy);
        OpenBook list = campaign.open("ombra-4.list");
        list.select("Marsh-Scouts");
        list.run("org.cantonment.editor.layout");
        Screen.until("the line is laid out", () -> list.text().contains("\n  . Marsh-Scouts"));
        assertTrue(list.text().contains("\n.Command: Staff"), list.text());
    }
}
