package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.notation.BookRuntimeModule;
import org.cantonment.notation.Document;
import org.cantonment.notation.ide.BookIdeModule;
import org.cantonment.notation.ide.Completion;
import org.cantonment.notation.ide.Proposal;
import org.eclipse.xtext.util.Modules2;
import org.junit.jupiter.api.Test;

import com.google.inject.Guice;

/** What is offered while somebody types. */
class CompletionTest {

    private static final Completion COMPLETION = Guice
            .createInjector(Modules2.mixin(new BookRuntimeModule(), new BookIdeModule())).getInstance(Completion.class);
    private static final String RULES = """
            rules Lake
            kind Guns
            unit Gun-Troop "Gun troop"
              . option Long-Guns for 2 points
            unit Tender
            formation Squadron
              . billet Line 1 of Gun-Troop
            """;

    /** The bar is the cursor. */
    private static List<String> offered(String file, String text) {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        int cursor = text.indexOf('|');
        String typed = text.replace("|", "");
        Document document = desk.put(file, typed);
        return COMPLETION.at(document.resource(), typed, cursor).stream().map(Proposal::text).toList();
    }

    @Test
    void anEmptyFileOffersTheKindsOfBook() {
        assertEquals(List.of("range", "rules", "shelf", "list", "campaign", "week", "names"), offered("a.list", "|"));
    }

    @Test
    void aNewLineOffersCardsAndNames() {
        List<String> offered = offered("a.list", "list X under Lake\n|");
        assertTrue(offered.containsAll(List.of("support", "Gun-Troop", "Squadron")), offered.toString());
        assertFalse(offered.contains("under"), offered.toString());
    }

    @Test
    void aNameIsFoundByTheFirstLettersOfItsParts() {
        assertEquals(List.of("Gun-Troop"), offered("a.list", "list X under Lake\nSquadron\n  . gt|"));
        assertEquals(List.of("Gun-Troop"), offered("a.list", "list X under Lake\nSquadron\n  . troo|\n  . Tender\n"));
    }

    @Test
    void afterACommaOnlyTheUnitsOptions() {
        assertEquals(List.of("Long-Guns"), offered("a.list", "list X under Lake\nSquadron\n  . Gun-Troop, |"));
        assertEquals(List.of(), offered("a.list", "list X under Lake\nSquadron\n  . Tender, |"));
    }

    @Test
    void wordsThatFitInsideALine() {
        assertEquals(List.of("under"), offered("a.list", "list X un|"));
        assertTrue(offered("b.rules", "rules B\nlimit L\n  . at |").containsAll(List.of("most", "least")));
        assertTrue(offered("b.rules", "rules B\nlimit L\n  . at most 2 of G|").contains("Guns"));
    }

    @Test
    void timesAtTheBenchAreOffered() {
        String part = "range R in EUR\npiece Cart\npart Frame\n  . ";
        assertTrue(offered("r.range", part + "|").contains("takes"));
        assertEquals(List.of("takes"), offered("r.range", part + "builds Cart ta|"));
        List<String> units = offered("r.range", part + "takes 90 |");
        assertTrue(units.containsAll(List.of("minutes", "hours")), units.toString());
        String wish = "shelf of the club\nwish Spring\n  . ";
        assertTrue(offered("c.shelf", wish + "|").contains("bench"));
        assertTrue(offered("c.shelf", wish + "bench 6 |").containsAll(List.of("hours", "minutes", "parts")));
        assertEquals(List.of("per"), offered("c.shelf", wish + "bench 6 hours |"));
        assertEquals(List.of("round", "week"), offered("c.shelf", wish + "bench 6 hours per |"));
    }

    @Test
    void theDisplayNameStandsBesideTheName() {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        Document list = desk.put("a.list", "list X under Lake\nGun");
        Proposal proposal = COMPLETION.at(list.resource(), list.text(), list.text().length()).get(0);
        assertEquals("unit, Gun troop", proposal.description());
        assertEquals(list.text().length() - 3, proposal.offset());
    }

    @Test
    void anExpressionOffersItsWordsAndTheNamesOfItsCard() {
        String card = "rules B over Lake\nlimit L\n  . let Wheels be count of Guns\n";
        List<String> begun = offered("b.rules", card + "  . always |");
        assertTrue(begun.containsAll(List.of("count", "each", "option", "the", "not", "Wheels")), begun.toString());
        assertEquals(List.of("Wheels"), offered("b.rules", card + "  . always Wh|"));
        List<String> sides = offered("b.rules", card + "  . always Wheels |");
        assertTrue(sides.containsAll(List.of("plus", "divided by", "is at least", "but at most", "and", "rounded")), sides.toString());
        assertEquals(List.of("Wheels"), offered("b.rules", card + "  . when count of units is at least Whe|"));
        List<String> elsewhere = offered("b.rules", card + "limit M\n  . always |");
        assertFalse(elsewhere.contains("Wheels"), elsewhere.toString());
    }

    @Test
    void anOptionInAnExpressionComesWithItsUnit() {
        String card = "rules B over Lake\nlimit L\n  . always option ";
        assertEquals(List.of("Long-Guns on Gun-Troop"), offered("b.rules", card + "|"));
        assertEquals(List.of("Long-Guns on Gun-Troop"), offered("b.rules", card + "lg|"));
        assertEquals(List.of("Long-Guns"), offered("b.rules", card + "Lo| on Gun-Troop is 1"));
        assertTrue(offered("b.rules", card + "Long-Guns on |").contains("Gun-Troop"));
    }
}
