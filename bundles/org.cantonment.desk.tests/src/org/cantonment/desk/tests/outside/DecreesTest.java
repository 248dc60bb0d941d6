package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

/**
 * French infantry of the line by the imperial decree of 18 February 1808, title I, articles 1 to 4, and by the decree of
 * 13 April 1815; both in the public domain. A point is a man.
 */
class DecreesTest {
    private static final String CENTRE = "line.rules:102 [billet Centre 4 of Fusiliers]";

    private final Books books = Books.of("line-1808");

    @Test
    void headsComeToThePublishedTotals() {
        // Decree of 1808: company 140, regiment 3,970. A company more or less is 140.
        Map<String, Long> heads = new TreeMap<>(Map.of("company", 140L, "regiment", 3970L, "one-too-many", 4110L,
                "one-too-many-counted", 4110L, "one-too-few", 3830L, "small-depot", 3830L, "wrong-kind", 3970L,
                "two-voltigeurs", 3970L, "old-regiment-in-1815", 3970L));
        // Decree of 1815: staff 25, minor staff 29, battalion 600; that there are two battalions is our own choice.
        heads.putAll(Map.of("regiment-1815", 25 + 29 + 2 * 600L, "no-minor-staff-1815", 25 + 2 * 600L,
                "new-regiment-in-1808", 25 + 29 + 2 * 600L));
        assertEquals(heads, books.points());
    }

    @Test
    void whatTheDecreesSetUpIsLegal() {
        // Decree of 1808: 108 officers and 3,862 others, two limits that the regiment is held against.
        assertEquals(List.of(), books.said("regiment"));
        assertEquals(List.of(), books.said("company"));
        // Decree of 1815.
        assertEquals(List.of(), books.said("regiment-1815"));
        assertEquals(List.of(), books.saidOfBooks());
    }

    @Test
    void oneCompanyTooManyIsNamedAtItsBillet() {
        assertEquals(List.of("one-too-many.list:59 [5 Fusiliers] breach billet.full by " + CENTRE),
                books.said("one-too-many"));
        assertEquals(List.of("No place for 1 of 5 Fusilier company in War battalion: billet Centre takes 4 of Fusilier "
                + "company and is full."), books.sentences("one-too-many"));
        assertEquals(List.of("Take out 1 of 5 Fusilier company."), books.mends("one-too-many", 0));
        books.mend("one-too-many", 0);
        assertEquals(List.of(), books.said("one-too-many"));
        assertEquals(3970, books.points().get("one-too-many"));
    }

    @Test
    void itAlsoMakesTheRanksThreeOfficersAnd137OthersTooMany() {
        // A company of the decree of 1808 is 3 officers and 137 others: 111 against 108, 3,999 against 3,862.
        assertEquals(List.of("one-too-many-counted.list:59 [5 Fusiliers] breach billet.full by " + CENTRE,
                "one-too-many-counted.list:73 [Second-Lieutenant] breach limit.at-most by "
                        + "muster.rules:4 [exactly 108 points on Officers]",
                "one-too-many-counted.list:78 [Soldiers] breach limit.at-most by "
                        + "muster.rules:6 [exactly 3862 points on Others]"), books.said("one-too-many-counted"));
        List<String> sentences = books.sentences("one-too-many-counted");
        assertEquals("Officers (Totals of 1808): exactly 108 points on Officers; the list has 111 points, 3 too many.",
                sentences.get(1));
        assertEquals("Sergeants and men (Totals of 1808): exactly 3862 points on Sergeants and men; the list has 3999 "
                + "points, 137 too many.", sentences.get(2));
    }

    @Test
    void nothingIsOfferedAsAMendThatTakesTooMany() {
        // The soldiers of a company are 121, and 137 must go: any entry of the list that holds so many holds more.
        assertEquals(List.of("Take out exactly 137 points of Sergeants and men."),
                books.mends("one-too-many-counted", 2));
    }

    @Test
    void oneCompanyTooFewIsNamedAtItsBillet() {
        assertEquals(List.of("one-too-few.list:38 [War-Battalion] breach billet.short by " + CENTRE),
                books.said("one-too-few"));
        assertEquals(List.of("War battalion: billet Centre takes 4 of Fusilier company and has 3; 1 more must be "
                + "placed."), books.sentences("one-too-few"));
        assertEquals(List.of("Add Fusilier company, 140 points."), books.mends("one-too-few", 0));
        assertEquals(List.of("small-depot.list:38 [Depot-Battalion] breach billet.short by "
                + "line.rules:105 [billet Companies 4 of Depot-Company]"), books.said("small-depot"));
    }

    @Test
    void theWrongKindOfCompanyIsNamed() {
        assertEquals(List.of("wrong-kind.list:38 [War-Battalion] breach billet.short by " + CENTRE,
                "wrong-kind.list:69 [Depot-Company] breach billet.wrong-kind by "
                        + "line.rules:99 [formation War-Battalion \"War battalion\"]"), books.said("wrong-kind"));
        assertEquals("No billet of War battalion takes Depot company; places for that: billet Companies of Depot "
                + "battalion.", books.sentences("wrong-kind").get(1));
        assertEquals(List.of("two-voltigeurs.list:38 [War-Battalion] breach billet.empty by "
                + "line.rules:100 [billet Right 1 of Grenadiers]", "two-voltigeurs.list:39 [2 Voltigeurs] breach "
                + "billet.full by line.rules:101 [billet Left 1 of Voltigeurs]"), books.said("two-voltigeurs"));
    }

    @Test
    void theDecreeOf1815AsksForAMinorStaff() {
        assertEquals(List.of("no-minor-staff-1815.list:3 [Regiment] breach billet.empty by "
                + "line.rules:111 [billet Minor-Staff 1 of Minor-Staff from Of-1815]"),
                books.said("no-minor-staff-1815"));
        assertEquals(List.of("Add Minor staff of 29, 29 points."), books.mends("no-minor-staff-1815", 0));
    }

    @Test
    void theOldRegimentIsAtFaultIn1815InEveryPart() {
        String list = "old-regiment-in-1815.list:";
        assertEquals(List.of(
                list + "3 [Regiment] breach billet.empty by line.rules:110 [billet Staff 1 of Staff-Of-25 from Of-1815]",
                list + "3 [Regiment] breach billet.empty by "
                        + "line.rules:111 [billet Minor-Staff 1 of Minor-Staff from Of-1815]",
                list + "3 [Regiment] breach billet.empty by "
                        + "line.rules:113 [billet War 1 to 5 of Battalion-Of-600 from Of-1815]",
                list + "4 [Staff-Of-50] breach era.no-longer by line.rules:98 [available to Of-1808]",
                list + "7 [4 War-Battalion] breach era.no-longer by line.rules:103 [available to Of-1808]",
                list + "38 [Depot-Battalion] breach era.no-longer by line.rules:106 [available to Of-1808]"),
                books.said("old-regiment-in-1815"));
    }

    @Test
    void theNewRegimentIsAtFaultIn1808InEveryPart() {
        String list = "new-regiment-in-1808.list:";
        assertEquals(List.of(
                list + "3 [Regiment] breach billet.empty by line.rules:109 [billet Staff 1 of Staff-Of-50]",
                list + "3 [Regiment] breach billet.empty by line.rules:112 [billet War 4 of War-Battalion]",
                list + "3 [Regiment] breach billet.empty by line.rules:114 [billet Depot 1 of Depot-Battalion]",
                list + "4 [Staff-Of-25] breach era.not-yet by line.rules:47 [available from Of-1815]",
                list + "5 [Minor-Staff] breach era.not-yet by line.rules:50 [available from Of-1815]",
                list + "6 [2 Battalion-Of-600] breach era.not-yet by line.rules:53 [available from Of-1815]"),
                books.said("new-regiment-in-1808"));
    }
}
