package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.editor.text.FixAssist;
import org.cantonment.editor.text.LanguageEditor;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.junit.jupiter.api.Test;

/** A dispensation is a fix of the list that is written into the campaign. */
class DispensationFixTest {

    private static final String BROKEN = Campaign.LIST.replace("  . 2 Crank-Troop of 4\n", "");

    private static List<ICompletionProposal> offers(OpenBook book, int offset) {
        return FixAssist.offers(book.editor().document(), book.editor().viewer().getAnnotationModel(), offset);
    }

    @Test
    void itOpensTheCampaignWithTheCaretWhereTheReasonGoesAndOneUndoTakesItBack() {
        Campaign campaign = Campaign.anew();
        campaign.write("heron.campaign", Campaign.SEASON + "show shelves to Brack\n");
        campaign.write("ombra-4.list", BROKEN);
        OpenBook list = campaign.open("ombra-4.list");
        Screen.until("the breach is marked", () -> list.marks().size() == 1);
        int at = list.marks().get(0).offset();
        Screen.until("a dispensation is offered", () -> offers(list, at).stream()
                .anyMatch(offer -> offer.getDisplayString().startsWith("Excuse ")));
        List<ICompletionProposal> offers = offers(list, at);
        ICompletionProposal last = offers.get(offers.size() - 1);
        assertEquals("Excuse Ombra from Causey-Squadron in round 4, in the campaign.", last.getDisplayString());
        assertTrue(offers.size() > 1 && !offers.get(0).getDisplayString().startsWith("Excuse"));
        last.apply(list.editor().document());
        LanguageEditor season = Screen.the("the campaign is open", () -> Campaign.page().getActiveEditor()
                instanceof LanguageEditor editor && editor.getEditorInput().getName().equals("heron.campaign")
                        && editor.document().get().contains("excuse") ? editor : null);
        assertEquals(BROKEN, list.text());
        String line = "excuse Ombra from Causey-Squadron in round 4 by Brack \"\"\n";
        assertEquals(Campaign.SEASON + "show shelves to Brack\n" + line, season.document().get());
        int caret = ((ITextSelection) season.getSelectionProvider().getSelection()).getOffset();
        assertEquals(season.document().get().length() - 2, caret);
        Screen.until("the breach is a note", () -> list.marks().stream().anyMatch(mark -> mark.severity().equals("note")
                && mark.message().endsWith("Excused by Brack.")));
        ((ITextOperationTarget) season.viewer()).doOperation(ITextOperationTarget.UNDO);
        assertEquals(Campaign.SEASON + "show shelves to Brack\n", season.document().get());
        Screen.until("the note is a breach again", () -> list.marks().stream()
                .anyMatch(mark -> mark.severity().equals("breach")));
    }
}
