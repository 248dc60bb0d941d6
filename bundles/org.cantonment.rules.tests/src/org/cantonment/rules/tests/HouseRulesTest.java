package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Court.codes;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.strengths;
import static org.cantonment.rules.tests.ListOf.one;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.FromRule;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.change.Mending;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** House rules over a published book, some of them for a few rounds; verdicts worked out by hand. */
class HouseRulesTest {

    private static final int LIMIT = 150;

    private final BookOf published = new BookOf("Book").eras("Long-Thaw").kind("Armour")
            .unit("Tread-Troop", strength(1, 20), is("Armour")).unit("Foot", strengths(1, 200, 1))
            .limit("Treads", bound(Span.atMost(3), "Tread-Troop"))
            .limit("Half-Armour", bound(Measure.PERCENT_OF_LIMIT, Span.atMost(50), Rounding.EXACT, "Armour"));

    private final BookOf winter = new BookOf("Winter", "Book").rounds(1, 4)
            .change(Direction.TIGHTEN, "Book/Treads", bound(Span.atMost(2), "Book/Tread-Troop"))
            .change(Direction.TIGHTEN, "Book/Half-Armour",
                    bound(Measure.PERCENT_OF_USED, Span.atMost(40), Rounding.EXACT, "Book/Armour"));

    private static BookOf weekend(Direction direction, String... over) {
        return new BookOf("Weekend", over).rounds(3, 3).change(direction, "Book/Treads",
                bound(Span.atMost(4), "Book/Tread-Troop"));
    }

    private static ListOf list(int treads, int foot) {
        ListOf list = new ListOf("Brack/2", "Book");
        for (int i = 0; i < treads; i++) {
            list.add(one("Tread-Troop"));
        }
        return list.add(one("Foot").of(foot));
    }

    private Ruling round(int number, BookOf weekend) {
        return Court.ruling(Court.in("Book/Long-Thaw", number), published, winter, weekend);
    }

    private static Verdict judge(Ruling ruling, ListOf list) {
        return Court.judge(ruling, list, LIMIT);
    }

    @Test
    void inRound2BothWinterRulesAreBrokenAndOneTroopLessMendsBoth() {
        Ruling ruling = round(2, weekend(Direction.LOOSEN, "Book"));
        assertEquals(List.of(), ruling.findings());
        Verdict verdict = judge(ruling, list(3, 80));
        assertEquals(140, verdict.points());
        assertEquals(List.of("limit.at-most", "limit.at-most"), breaches(verdict));
        Finding treads = verdict.findings().get(0);
        Finding armour = verdict.findings().get(1);
        assertEquals(Id.of("Winter/change-1#1"), treads.rule().orElseThrow());
        assertEquals("Treads (Winter): at most 2 of Tread-Troop; the list has 3, 1 too many.", treads.message());
        assertEquals(Id.of("Brack/2#3"), treads.at());
        assertEquals("Half-Armour (Winter): at most 40 percent of points used on Armour, that is 56 of 140; "
                + "the list has 60 points, 4 too many.", armour.message());
        assertEquals(List.of(), judge(ruling, list(2, 80)).findings());
    }

    @Test
    void theMendOfBothIsTriedAndSaysSo() {
        Ruling ruling = round(2, weekend(Direction.LOOSEN, "Book"));
        Situation situation = Situation.BARE.withPoints(LIMIT, Optional.empty());
        Verdict verdict = Judge.judge(ruling, list(3, 80).build(), situation);
        List<Finding> refined = Mending.refine(ruling, list(3, 80).build(), situation, verdict, 100);
        assertEquals("Strike Tread-Troop (mends 2 findings).", refined.get(0).mends().get(0).label());
        assertEquals("Strike Tread-Troop (mends 2 findings).", refined.get(1).mends().get(0).label());
        assertTrue(refined.get(1).mends().get(1).label().startsWith("Take Foot at strength 90, "));
    }

    @Test
    void aMendThatBreaksSomethingElseIsLeftOut() {
        BookOf tight = new BookOf("Tight").unit("Raft", strength(1, 5)).unit("Punt", strength(1, 4))
                .limit("More-Rafts", bound(Span.atLeast(2), "Raft")).limit("Few", bound(Span.atMost(2), "Raft", "Punt"));
        Ruling ruling = Court.ruling(Court.in("Tight/None"), tight);
        ListOf list = new ListOf("L", "Tight").add(one("Raft"), one("Punt"));
        Verdict verdict = Judge.judge(ruling, list.build(), Situation.BARE);
        ListOf same = new ListOf("L", "Tight").add(one("Raft"), one("Punt"));
        assertEquals(1, verdict.findings().get(0).mends().size());
        assertEquals(List.of(), Mending.refine(ruling, same.build(), Situation.BARE, verdict, 9).get(0).mends());
    }

    @Test
    void inRound3TheWeekendRelaxesTheTroopsAndTenPointsOfFootMendTheArmour() {
        for (BookOf weekend : List.of(weekend(Direction.LOOSEN, "Book"), weekend(Direction.LOOSEN, "Winter"))) {
            Ruling ruling = round(3, weekend);
            assertEquals(List.of(), ruling.findings());
            Verdict verdict = judge(ruling, list(3, 80));
            assertEquals(List.of("limit.at-most"), breaches(verdict));
            assertEquals(List.of("limit.relaxed"), codes(verdict, Severity.NOTE));
            assertEquals("Treads: relaxed by Weekend from what stands in Winter (at most 2 of Tread-Troop); the list has 3.",
                    verdict.findings(Severity.NOTE).get(0).message());
            assertEquals(List.of(new SetStrength(Id.of("Brack/2#4"), 90)),
                    verdict.findings().get(0).mends().get(0).actions());
            assertTrue(verdict.findings().get(0).mends().stream().anyMatch(
                    mend -> mend.label().equals("Strike Tread-Troop.")));
            assertEquals(List.of(), breaches(judge(ruling, list(3, 90))));
            assertEquals(List.of("limit.at-most"), breaches(judge(ruling, list(3, 89))));
        }
    }

    @Test
    void inRound5OnlyThePublishedBookIsLeft() {
        Verdict verdict = judge(round(5, weekend(Direction.LOOSEN, "Book")), list(3, 80));
        assertEquals(List.of(), verdict.findings());
    }

    @Test
    void aLayerThatRelaxesWithoutSayingSoIsAtFaultAndTheStrictestStands() {
        for (BookOf weekend : List.of(weekend(Direction.CHANGE, "Book"), weekend(Direction.CHANGE, "Winter"))) {
            Ruling ruling = round(3, weekend);
            assertTrue(ruling.findings().stream().allMatch(finding -> finding.at().equals(Id.of("Weekend/change-1#1"))));
            assertTrue(ruling.findings().stream().anyMatch(finding -> finding.code().equals("layer.relaxes-unsaid")));
            assertEquals(List.of("limit.at-most", "limit.at-most"), breaches(judge(ruling, list(3, 80))));
        }
    }

    @Test
    void aTighteningThatLoosensIsAtFault() {
        Ruling ruling = round(3, weekend(Direction.TIGHTEN, "Book"));
        assertEquals(List.of("layer.direction"), ruling.findings().stream().map(Finding::code).toList());
        assertEquals(2, breaches(judge(ruling, list(3, 80))).size());
        BookOf loosens = new BookOf("Loose", "Book").change(Direction.LOOSEN, "Book/Treads",
                bound(Span.atMost(1), "Book/Tread-Troop"));
        Ruling other = Court.ruling(Court.in("Book/Long-Thaw", 5), published, loosens);
        assertEquals(List.of("layer.direction"), other.findings().stream().map(Finding::code).toList());
        assertEquals(List.of("limit.at-most"), breaches(judge(other, list(2, 80))));
    }

    @Test
    void aDispensationMakesANoteOfOneBreachAndLeavesTheOther() {
        Excuse excuse = new Excuse(Id.of("Season#1"), Id.of("Brack"), new FromRule(Id.of("Book/Treads"),
                Optional.of(Id.of("Book/Tread-Troop"))), Validity.of(new InRounds(2, 2)), Id.of("Ombra"), "birthday");
        Ruling ruling = round(2, weekend(Direction.LOOSEN, "Book"));
        Situation situation = Situation.BARE.withPoints(LIMIT, Optional.empty()).withExcuses(List.of(excuse));
        Verdict his = Judge.judge(ruling, list(3, 80).build(),
                situation.withPlayer(Id.of("Brack"), Optional.empty()));
        assertEquals(List.of("limit.at-most"), breaches(his));
        assertEquals("Half-Armour", his.findings().get(0).message().substring(0, 11));
        assertTrue(his.findings(Severity.NOTE).get(0).message().endsWith("Excused by Ombra: birthday."));
        Verdict hers = Judge.judge(ruling, list(3, 80).build(),
                situation.withPlayer(Id.of("Quill"), Optional.empty()));
        assertEquals(2, breaches(hers).size());
        Verdict later = Judge.judge(round(1, weekend(Direction.LOOSEN, "Book")), list(3, 80).build(),
                situation.withPlayer(Id.of("Brack"), Optional.empty()));
        assertEquals(2, breaches(later).size());
    }

    @Test
    void withTheDispensationTenPointsOfFootMendWhatIsLeft() {
        Excuse excuse = new Excuse(Id.of("Season#1"), Id.of("Brack"), new FromRule(Id.of("Book/Treads"),
                Optional.of(Id.of("Book/Tread-Troop"))), Validity.of(new InRounds(2, 2)), Id.of("Ombra"), "birthday");
        Ruling ruling = round(2, weekend(Direction.LOOSEN, "Book"));
        Situation his = Situation.BARE.withPoints(LIMIT, Optional.empty()).withExcuses(List.of(excuse))
                .withPlayer(Id.of("Brack"), Optional.empty());
        ForceList list = list(3, 80).build();
        Verdict verdict = Judge.judge(ruling, list, his);
        Finding armour = Mending.refine(ruling, list, his, verdict, 100).get(0);
        assertEquals(List.of(new SetStrength(Id.of("Brack/2#4"), 90)), armour.mends().get(0).actions());
        Answer least = LeastChange.search(ruling, ruling, list, his, Fielding.ALL, 1, LeastChange.MOST).answers().get(0);
        assertEquals(List.of(10L, 1, 150L), List.of(least.moved(), least.units(), least.verdict().points()));
        assertEquals(armour.mends().get(0).actions(), least.actions());
    }

    @Test
    void unrelatedLayersThatBothTightenLeaveTheStricterInAnyOrder() {
        BookOf spring = new BookOf("Spring", "Book").change(Direction.TIGHTEN, "Book/Treads",
                bound(Span.atMost(1), "Book/Tread-Troop"));
        for (Ruling ruling : List.of(Court.ruling(Court.in("Book/Long-Thaw", 2), published, spring, winter),
                Court.ruling(Court.in("Book/Long-Thaw", 2), published, winter, spring))) {
            assertEquals(List.of(), ruling.findings());
            assertTrue(judge(ruling, list(2, 80)).findings().get(0).message().startsWith("Treads (Spring): at most 1 "));
        }
    }
}
