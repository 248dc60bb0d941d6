package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Court.codes;
import static org.cantonment.rules.tests.Line.before;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.boundIn;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.keep;
import static org.cantonment.rules.tests.Line.mend;
import static org.cantonment.rules.tests.Line.per;
import static org.cantonment.rules.tests.Line.says;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.taking;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** Every form of limit, just kept and just broken; verdicts worked out by hand. */
class LimitsTest {

    private static BookOf lake() {
        return new BookOf("Lake").kind("Afloat").kind("Heavy", "Afloat").kind("Guns")
                .unit("Guard", strength(4, 10), strength(6, 15)).unit("Battery", strength(3, 20), is("Guns"))
                .unit("Long-Battery", strength(3, 30), strength(4, 36), is("Guns"))
                .unit("Barge", strength(1, 12), is("Heavy")).unit("Punt", strength(4, 7), strength(6, 9), is("Afloat"));
    }

    private static ListOf list(ListOf.Row... rows) {
        return new ListOf("Anna/4", "Lake").add(rows);
    }

    private static Ruling rules(BookOf book) {
        return Court.ruling(Occasion.UNKNOWN, book);
    }

    private static void assertBreaks(BookOf book, ListOf kept, ListOf broken, String code) {
        Ruling ruling = rules(book);
        assertEquals(List.of(), breaches(Court.judge(ruling, kept)));
        assertEquals(List.of(code), breaches(Court.judge(ruling, broken)));
    }

    @Test
    void countsOfKindsReachIntoKinds() {
        assertBreaks(lake().limit("Few", bound(Span.atMost(2), "Afloat")), list(one("Barge"), one("Punt")),
                list(one("Barge"), some(2, "Punt")), "limit.at-most");
        assertBreaks(lake().limit("Some", bound(Span.atLeast(2), "Afloat")), list(one("Barge"), one("Punt")),
                list(one("Barge")), "limit.at-least");
        assertBreaks(lake().limit("Two", bound(Span.exactly(2), "Guns")), list(some(2, "Battery")),
                list(some(3, "Battery")), "limit.at-most");
    }

    @Test
    void aCircleOfKindsEndsWhereItCloses() {
        BookOf book = lake().kind("Egg", "Hen").kind("Hen", "Egg").unit("Chick", strength(1, 1), is("Egg"))
                .limit("Brood", bound(Span.atMost(1), "Hen"));
        assertEquals(List.of("limit.at-most"), breaches(Court.judge(rules(book), list(some(2, "Chick")))));
    }

    @Test
    void oneForEachTwoCountsFullGroups() {
        BookOf book = lake().limit("Serve", per(Span.atMost(1), "Punt", 2, "Guns"));
        assertBreaks(book, list(some(2, "Punt"), some(5, "Battery")), list(some(3, "Punt"), some(5, "Battery")),
                "limit.at-most");
        assertBreaks(book, list(one("Punt"), one("Battery"), one("Long-Battery")), list(one("Punt"), one("Battery")),
                "limit.at-most");
    }

    @Test
    void sharesAreExactUnlessRoundingIsSaid() {
        // Guns 50 of 77: 64 percent are 49.28, 65 percent are 50.05.
        ListOf list = list(one("Battery"), one("Long-Battery"), some(2, "Guard"), one("Punt"));
        assertEquals(77, Court.judge(rules(lake()), list).points());
        assertShare(true, 65, Rounding.EXACT);
        assertShare(true, 65, Rounding.DOWN);
        assertShare(true, 64, Rounding.UP);
        assertShare(false, 64, Rounding.DOWN);
        assertShare(false, 64, Rounding.EXACT);
        assertEquals("Not-All-Guns (Lake): at most 64 percent of points used on Guns, that is 49.28 of 77; "
                + "the list has 50 points, 0.72 too many.",
                Court.judge(rules(share(64, Rounding.EXACT)), list).findings().get(0).message());
    }

    private static void assertShare(boolean kept, int percent, Rounding rounding) {
        ListOf list = list(one("Battery"), one("Long-Battery"), some(2, "Guard"), one("Punt"));
        assertEquals(kept, Court.judge(rules(share(percent, rounding)), list).legal(), percent + " " + rounding);
    }

    private static BookOf share(int percent, Rounding rounding) {
        return lake().limit("Not-All-Guns", bound(Measure.PERCENT_OF_USED, Span.atMost(percent), rounding, "Guns"));
    }

    @Test
    void aShareOfTheLimitNeedsALimit() {
        Ruling ruling = rules(lake().limit("Half",
                bound(Measure.PERCENT_OF_LIMIT, Span.atMost(50), Rounding.EXACT, "Guns")));
        assertEquals(List.of(), breaches(Court.judge(ruling, list(one("Battery")), 40)));
        assertEquals(List.of("limit.at-most"), breaches(Court.judge(ruling, list(one("Battery")), 39)));
        assertEquals(List.of("limit.no-base"), codes(Court.judge(ruling, list(one("Battery"))), Severity.NOTE));
    }

    @Test
    void pointsMayBeBoundFromBothEnds() {
        BookOf book = lake().limit("Fair", bound(Measure.POINTS, Span.of(20, 40), Rounding.EXACT, "Guns"));
        assertBreaks(book, list(one("Battery")), list(one("Guard")), "limit.at-least");
        assertBreaks(book, list(some(2, "Battery")), list(one("Battery"), one("Long-Battery")), "limit.at-most");
    }

    @Test
    void eachFormationIsCountedForItself() {
        BookOf book = lake().formation("Raft", Line.billet("Crew", Span.atMost(9), "Guard", "Afloat"))
                .formation("Fleet", Line.billet("Rafts", Span.atMost(9), "Raft"));
        ListOf spread = list(formation("Fleet", formation(2, "Raft", one("Barge")), formation("Raft", one("Guard"))));
        ListOf heaped = list(formation("Fleet", formation("Raft", some(2, "Barge"))));
        assertBreaks(book.limit("One", boundIn(Reckoning.EACH_FORMATION, null, Span.atMost(1), "Heavy")), spread, heaped,
                "limit.at-most");
        BookOf whole = lake().formation("Raft", Line.billet("Crew", Span.atMost(9), "Guard", "Afloat"))
                .formation("Fleet", Line.billet("Rafts", Span.atMost(9), "Raft"))
                .limit("One", boundIn(Reckoning.EACH_OF, "Fleet", Span.exactly(2), "Heavy"));
        Verdict verdict = Court.judge(rules(whole), list(formation("Fleet", formation("Raft", one("Barge")))));
        assertEquals(List.of("limit.at-least"), breaches(verdict));
        assertEquals(Id.of("Anna/4#1"), verdict.findings().get(0).at());
    }

    @Test
    void theCampaignCountsWhatWasUsedBefore() {
        Ruling ruling = rules(lake().limit("Once", boundIn(Reckoning.CAMPAIGN, null, Span.atMost(1), "Barge")));
        assertEquals(List.of(), breaches(Court.judge(ruling, list(one("Barge")))));
        Verdict again = Judge.judge(ruling, list(one("Barge")).build(),
                Situation.BARE.withUsed(Map.of(Id.of("Lake/Barge"), 1)));
        assertEquals(List.of("limit.at-most"), breaches(again));
        assertTrue(again.findings().get(0).message().contains("with this list the campaign has 2"));
    }

    @Test
    void takingOneThingAsksForAnother() {
        assertBreaks(lake().limit("Aimed", taking("Guns", Relation.NEEDS, "Punt")), list(one("Battery"), one("Punt")),
                list(one("Battery")), "taking.needs");
        assertBreaks(lake().limit("Dry", taking("Barge", Relation.EXCLUDES, "Afloat")), list(some(2, "Barge")),
                list(one("Barge"), one("Punt")), "taking.excludes");
        assertBreaks(lake().limit("Beside", taking("Punt", Relation.JOINS, "Guard")),
                list(one("Guard").as("Herons"), one("Punt").joins("Herons")),
                list(one("Guard").as("Herons"), one("Punt")), "taking.joins");
        assertBreaks(lake().limit("Seats", taking("Punt", Relation.MATCHES, "Guard")),
                list(one("Guard").of(6), one("Guard"), one("Punt").of(6), one("Punt").of(4)),
                list(one("Guard").of(6), one("Guard"), one("Punt").of(4), one("Punt").of(4)), "taking.matches");
    }

    @Test
    void theListBeforeIsKeptButForSoManyUnits() {
        Ruling ruling = rules(lake().limit("Steady", keep(1)));
        Situation after = Situation.BARE.withBefore(list(some(2, "Guard"), one("Battery")).build());
        assertEquals(List.of(), breaches(Judge.judge(ruling, list(some(2, "Guard"), one("Punt")).build(), after)));
        Verdict verdict = Judge.judge(ruling, list(one("Guard"), one("Punt")).build(), after);
        assertEquals(List.of("keep.too-many"), breaches(verdict));
        assertEquals("Steady (Lake): of the list before, at most 1 may be changed; 2 are gone: 1 Battery and 1 Guard.",
                verdict.findings().get(0).message());
    }

    @Test
    void oneThingComesBeforeAnother() {
        assertBreaks(lake().limit("First", before(1, "Guard", 2, "Guns")), list(one("Battery")), list(some(2, "Battery")),
                "before.missing");
    }

    @Test
    void aLimitSpeaksInItsOwnWordsAndAsGravelyAsItSays() {
        Ruling ruling = rules(lake().caution("Few", says("Barges are rare."), mend("Leave one at home."),
                bound(Span.atMost(1), "Barge")));
        Verdict verdict = Court.judge(ruling, list(some(2, "Barge")));
        assertTrue(verdict.legal());
        Finding finding = verdict.findings(Severity.CAUTION).get(0);
        assertEquals("Barges are rare. Few (Lake): at most 1 of Barge; the list has 2, 1 too many.", finding.message());
        assertEquals("Leave one at home.", finding.mends().get(0).label());
        assertEquals("Take out 1 of 2 Barge.", finding.mends().get(1).label());
    }

    @Test
    void theOrderOfLimitsInTheBookChangesNothing() {
        ListOf list = list(some(3, "Barge"), one("Battery"), one("Punt"));
        ListOf same = list(some(3, "Barge"), one("Battery"), one("Punt"));
        Verdict one = Court.judge(rules(many()), list);
        Verdict other = Court.judge(rules(many().reversed()), same);
        assertEquals(4, one.findings().size());
        assertEquals(one.findings(), other.findings());
    }

    private static BookOf many() {
        return lake().limit("A", bound(Span.atMost(2), "Barge")).limit("B", bound(Span.atMost(1), "Afloat"))
                .limit("C", bound(Span.atLeast(1), "Guard")).caution("D", taking("Barge", Relation.EXCLUDES, "Guns"));
    }

    @Test
    void contingentsAreJudgedByTheirOwnBooks() {
        BookOf ally = new BookOf("Fen").unit("Reed", strength(2, 5)).limit("Two", bound(Span.atMost(2), "Reed"));
        Ruling own = rules(lake());
        Ruling fen = rules(ally);
        ListOf list = list(one("Guard")).contingent(new ListOf("Anna/4/Allies", "Fen").add(some(3, "Reed")).to(10));
        Situation situation = Situation.BARE.withPoints(25, Optional.empty())
                .withContingents(Map.of(Id.of("Anna/4/Allies"), fen));
        Verdict verdict = Judge.judge(own, list.build(), situation);
        assertEquals(25, verdict.points());
        assertEquals(List.of("points.contingent-over", "limit.at-most"), breaches(verdict));
    }
}
