package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cantonment.domain.force.ForceList;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextMend;
import org.junit.jupiter.api.Test;

/** Names across files: found, missed, open, and looked up again when they come and go. */
class LinkingTest {

    private static final String RULES = "rules Lake\nunit Gun-Troop\n  . strength 2 for 14 points\n";
    private static final String LIST = "list Mine under Lake\nGun-Troop of 2\n";

    @Test
    void aNameIsFoundInAnotherFileWhicheverComesFirst() {
        Desk desk = new Desk();
        Document list = desk.put("mine.list", LIST);
        assertEquals(List.of("1:17 breach name.unknown", "2:1 breach name.unknown"), Desk.findings(list));
        desk.put("lake.rules", RULES);
        assertEquals(List.of(), Desk.findings(list));
        assertEquals("Lake/Gun-Troop", list.meaning(ForceList.class).orElseThrow().body().entries().get(0).what().text());
    }

    @Test
    void aNameThatGoesIsMissedAndOneThatComesBackIsFound() {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        Document list = desk.put("mine.list", LIST);
        assertEquals(List.of(), Desk.findings(list));
        desk.put("lake.rules", RULES.replace("Gun-Troop", "Gun-Band"));
        assertEquals(List.of("2:1 breach name.unknown"), Desk.findings(list));
        desk.put("lake.rules", RULES);
        assertEquals(List.of(), Desk.findings(list));
        desk.library().remove(Path.of("/desk", "lake.rules"));
        desk.library().linkAnew();
        assertEquals(2, Desk.findings(list).size());
    }

    @Test
    void onlyBooksThatAskedForAChangedNameAreLinkedAnew() {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        Document asks = desk.put("mine.list", LIST);
        Document other = desk.put("c.campaign", "campaign Tuesday\nplayer Ombra\n");
        asks.findings();
        other.findings();
        desk.library().put(Path.of("/desk", "lake.rules"), RULES.replace("14", "15"));
        assertEquals(List.of(), desk.library().linkAnew());
        desk.library().put(Path.of("/desk", "lake.rules"), RULES.replace("Gun-Troop", "Gun-Band"));
        assertEquals(List.of(asks), desk.library().linkAnew());
    }

    @Test
    void aNameOfTwoBooksMustSayWhich() {
        Desk desk = new Desk();
        desk.put("a.range", "range Oddbarrow\npiece Car\n");
        desk.put("b.range", "range Sedgemill\npiece Car\n");
        Document shelf = desk.put("s.shelf", "shelf of the club\n2 Car\nSedgemill/Car\n");
        assertEquals(List.of("2:3 breach name.two-books"), Desk.findings(shelf));
        assertEquals(List.of("Write Oddbarrow/Car", "Write Sedgemill/Car"),
                shelf.findings().get(0).mends().stream().map(TextMend::label).toList());
    }

    @Test
    void theNearestNameIsOffered() {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        Document list = desk.put("mine.list", "list Mine under Lake\nGun-Trop of 2\n");
        assertTrue(list.findings().get(0).message().contains("did you mean 'Gun-Troop'?"),
                list.findings().get(0).message());
        assertEquals("Write Gun-Troop", list.findings().get(0).mends().get(0).label());
    }

    @Test
    void aRenamedDisplayNameBreaksNothing() {
        Desk desk = new Desk();
        desk.put("lake.rules", RULES);
        Document list = desk.put("mine.list", LIST);
        list.findings();
        desk.library().put(Path.of("/desk", "lake.rules"), RULES.replace("unit Gun-Troop", "unit Gun-Troop \"New name\""));
        assertEquals(List.of(), desk.library().linkAnew());
        assertEquals(List.of(), Desk.findings(list));
    }
}
