package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

import org.cantonment.editor.api.OutlineNode;
import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.text.LanguageOutline;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.Proposals;
import org.cantonment.workbench.tests.driver.Screen;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.Region;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lines that reckon, in the editor: their colours, what is said of their names, their place in the outline. */
class ExpressionLinesTest {

    private static final String LINES = """
            limit Enough-Eyes "Somebody must look"
              . let Wheels be count of Armour times 2
              . let Blind be not any unit has points of Scouting is at least 8
              . when the round is at least 3 and Blind
              . always each Causey-Squadron has count of Scouting is at least Wheels divided by 4 rounded up
              . always option Long-Guns on Tread-Troop is at most 1
              . says "Blind wheels end in the lake."
            """;

    private OpenBook rules;

    @BeforeEach
    void open() {
        Campaign campaign = Campaign.anew();
        campaign.write("lake.rules", Campaign.RULES + LINES);
        rules = campaign.open("lake.rules");
    }

    private RGB colour(int offset) {
        StyleRange style = rules.widget().getStyleRangeAtOffset(offset);
        return style == null || style.foreground == null ? null : style.foreground.getRGB();
    }

    private static RGB colour(TextKind kind) {
        return PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry().getRGB(kind.colourId());
    }

    /** The place of a word in a line of the card. */
    private int at(String line, String word) {
        int start = rules.find(line);
        int found = rules.text().indexOf(word, start);
        assertTrue(found >= 0 && rules.text().indexOf('\n', start) > found, word + " in " + line);
        return found;
    }

    @Test
    void wordsNamesAndNumbersHaveTheirColours() {
        rules.caretBehind("Wheels divided");
        Screen.idle();
        for (String line : List.of("let Wheels", "let Blind", "when the", "always each", "always option")) {
            String[] text = rules.text().substring(rules.find(line)).lines().findFirst().orElseThrow().split(" ");
            Stream.of(text).filter(word -> Character.isLowerCase(word.charAt(0)))
                    .forEach(word -> assertEquals(colour(TextKind.KEYWORD), colour(at(line, word)), line + ": " + word));
        }
        assertEquals(colour(TextKind.DEFINITION), colour(at("let Wheels", "Wheels")));
        assertEquals(colour(TextKind.NAME), colour(at("always each", "Wheels")));
        assertEquals(colour(TextKind.NUMBER), colour(at("always each", "4")));
        Screen.picture("expressions");
    }

    @Test
    void aLetsNameSaysWhatItStandsFor() {
        assertEquals("let Wheels be count of Armour times 2\nStands for a number.", hover(at("always each", "Wheels")));
        assertEquals("let Wheels be count of Armour times 2\nStands for a number.", hover(at("let Wheels", "Wheels")));
        assertEquals("let Blind be not any unit has points of Scouting is at least 8\nStands for a yes or no.",
                hover(at("when the", "Blind")));
    }

    /** The viewer asks on a thread of its own; so does this. */
    private String hover(int offset) {
        CompletableFuture<String> answer = CompletableFuture.supplyAsync(
                () -> rules.editor().hover().getHoverInfo(rules.editor().viewer(), new Region(offset + 1, 0)));
        Screen.until("the hover is there", answer::isDone);
        return answer.join();
    }

    @Test
    void theUseOfALetLeadsToItsLine() {
        rules.caretBehind("at least Wheels");
        rules.run("org.cantonment.editor.definition");
        ITextSelection selection = (ITextSelection) rules.editor().getSelectionProvider().getSelection();
        assertEquals("Wheels", selection.getText());
        assertEquals(at("let Wheels", "Wheels"), selection.getOffset());
        Screen.until("both uses are marked",
                () -> rules.marked("org.cantonment.editor.occurrence").equals(List.of("Wheels", "Wheels")));
    }

    @Test
    void eachLineHasItsEntryInTheOutline() {
        LanguageOutline outline = (LanguageOutline) rules.editor().getAdapter(IContentOutlinePage.class);
        Screen.until("the outline shows the book", () -> !outline.shown().isEmpty());
        List<OutlineNode> cards = outline.shown().get(0).children();
        OutlineNode eyes = cards.get(cards.size() - 1);
        assertEquals("limit Enough-Eyes", eyes.label());
        assertEquals("Somebody must look", eyes.detail());
        assertEquals(List.of("let Wheels be count of Armour times 2",
                "let Blind be not any unit has points of Scouting is at least 8", "when the round is at least 3 and Blind"),
                eyes.children().stream().map(OutlineNode::label).toList().subList(0, 3));
        assertEquals("says", eyes.children().get(5).label());
        assertEquals("Blind wheels end in the lake.", eyes.children().get(5).detail());
        assertEquals("option Long-Guns, at most 2, for 2 points each", cards.stream()
                .filter(card -> card.label().equals("unit Tread-Troop")).findFirst().orElseThrow().children().get(3).label());
    }

    @Test
    void anOptionIsProposedWithItsUnit() {
        rules.caretBehind("is at most 1");
        rules.type("\nalways option L");
        rules.run("org.eclipse.ui.edit.text.contentAssist.proposals");
        Screen.until("the one proposal is put in", () -> {
            Proposals.takeAlone("Long-Guns on Tread-Troop");
            return rules.text().contains("  . always option Long-Guns on Tread-Troop\n");
        });
    }
}
