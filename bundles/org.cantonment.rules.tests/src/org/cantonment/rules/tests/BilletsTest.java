package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.either;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.needs;
import static org.cantonment.rules.tests.Line.strength;
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
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.MoveEntry;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Placing;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.change.ListEdits;
import org.cantonment.rules.view.Ruling;
import org.junit.jupiter.api.Test;

/** Formations, supports and what stands beside them; verdicts worked out by hand. */
class BilletsTest {

    private final BookOf book = new BookOf("Lake").kind("Afloat").kind("Heavy", "Afloat").kind("Scouting")
            .unit("Staff", strength(2, 6)).unit("Guard", strength(4, 9), strength(6, 13))
            .unit("Guns", strength(3, 14)).unit("Scouts", strength(2, 4), is("Scouting", "Afloat"))
            .unit("Mortar", strength(2, 8), is("Afloat")).unit("Barge", strength(1, 12), is("Heavy"))
            .unit("Tender", strength(1, 3), is("Afloat"))
            .formation("Lock", billet("Command", Span.exactly(1), "Staff"),
                    billet("Line", Span.of(2, 3), "Guard", "Guns"), billet("Eyes", Span.of(0, 1), "Scouting"),
                    either("Fire", Span.atMost(2), "Mortar", Span.atMost(1), "Barge"))
            .formation("Battery", billet("Command", Span.exactly(1), "Staff"), billet("Line", Span.of(1, 3), "Guns"))
            .formation("Battalion", Line.costs(5), billet("Companies", Span.of(2, 3), "Lock", "Battery"))
            .support("Float", Span.atMost(2), 1, null, "Heavy").support("Boats", Span.atMost(1), 2, "Lock", "Tender");

    private final Ruling ruling = Court.ruling(Occasion.UNKNOWN, book);

    private static ListOf list(ListOf.Row... rows) {
        return new ListOf("Anna/4", "Lake").add(rows);
    }

    private Verdict judge(ListOf list) {
        return Court.judge(ruling, list);
    }

    @Test
    void theWeeklyListOfTheSampleIsLegal() {
        Verdict verdict = judge(list(formation("Lock", one("Staff"), some(2, "Guard").of(6), one("Guns"), one("Scouts"),
                some(2, "Mortar"))));
        assertEquals(List.of(), verdict.findings());
        assertEquals(6 + 26 + 14 + 4 + 16, verdict.points());
        assertEquals(new Placing(Id.of("Anna/4#3"), 2, Id.of("Lake/Lock#2"), "Line"), verdict.placings().get(1));
    }

    @Test
    void aBilletIsFilledThroughOneAlternativeOnly() {
        assertEquals(List.of(), breaches(judge(list(formation("Lock", one("Staff"), some(2, "Guard"), one("Barge"))))));
        Verdict both = judge(list(formation("Lock", one("Staff"), some(2, "Guard"), some(2, "Mortar"), one("Barge"))));
        assertEquals(List.of("billet.full"), breaches(both));
        Finding finding = both.findings().get(0);
        assertEquals(Id.of("Anna/4#5"), finding.at());
        assertTrue(finding.message().contains("only one of its uses is allowed"), finding.message());
    }

    @Test
    void whatALaterBilletAloneTakesLeavesTheEarlierOneFree() {
        BookOf tight = new BookOf("Tight").unit("A", strength(1, 1)).unit("B", strength(1, 1))
                .formation("F", billet("First", Span.atMost(1), "A", "B"), billet("Second", Span.atMost(1), "A"));
        Verdict verdict = Court.judge(Court.ruling(Occasion.UNKNOWN, tight),
                new ListOf("L", "Tight").add(formation("F", one("A"), one("B"))));
        assertEquals(List.of(), verdict.findings());
        assertEquals("Second", verdict.placings().get(0).title());
    }

    @Test
    void aPinHoldsAndABilletThatDoesNotTakeThePinnedSaysSo() {
        Verdict verdict = judge(list(formation("Lock", one("Staff"), one("Guard").in("Line"), one("Guns").in("Eyes"))));
        assertEquals(List.of("billet.short", "billet.wrong-kind"), breaches(verdict));
        assertEquals("Billet Eyes of Lock does not take Guns; places for that: billet Line of Lock and "
                + "billet Line of Battery.", verdict.findings().get(1).message());
    }

    @Test
    void aPinThatIsInTheWayIsLeftOutFirst() {
        Verdict verdict = judge(list(formation("Lock", one("Staff"), some(2, "Guard"), one("Guns").in("Eyes"))));
        assertEquals(List.of("billet.wrong-kind"), breaches(verdict));
        Mend first = verdict.findings().get(0).mends().get(0);
        assertEquals("Leave out Eyes; it fits Line.", first.label());
        ForceList mended = ListEdits.apply(list(formation("Lock", one("Staff"), some(2, "Guard"),
                one("Guns").in("Eyes"))).build(), first.actions());
        assertEquals(Optional.empty(), mended.body().entries().get(0).body().entries().get(2).billet());
    }

    @Test
    void formationsNestAndCostTheirOwnPoints() {
        ListOf.Row lock = formation("Lock", one("Staff"), some(2, "Guard"));
        ListOf.Row battery = formation(2, "Battery", one("Staff"), one("Guns"));
        Verdict verdict = judge(list(formation("Battalion", lock, battery)));
        assertEquals(List.of(), verdict.findings());
        assertEquals(5 + 6 + 18 + 2 * 20, verdict.points());
        Verdict alone = judge(list(formation("Battalion", formation("Lock", one("Staff"), some(2, "Guard")))));
        assertEquals(List.of("billet.short"), breaches(alone));
        AddUnit add = (AddUnit) alone.findings().get(0).mends().get(0).actions().get(0);
        assertEquals(Id.of("Lake/Battery"), add.unit());
        assertEquals("Add Battery, 20 points.", alone.findings().get(0).mends().get(0).label());
    }

    @Test
    void aSurplusUnitMayMoveToAFormationWithRoom() {
        Verdict verdict = judge(list(formation("Lock", one("Staff"), some(3, "Guard"), one("Guns")),
                formation("Battery", one("Staff"), one("Guns"))));
        assertEquals(List.of("billet.full"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals(new MoveEntry(Id.of("Anna/4#4"), Id.of("Anna/4#5"), Optional.of("Line")),
                finding.mends().get(0).actions().get(0));
        assertEquals(new RemoveEntry(Id.of("Anna/4#4")), finding.mends().get(1).actions().get(0));
    }

    @Test
    void supportsCountForEveryFullGroup() {
        ListOf.Row first = formation(2, "Lock", one("Staff"), some(2, "Guard"));
        assertEquals(List.of(), breaches(judge(list(first).support(one("Tender"), some(2, "Barge")))));
        assertEquals(List.of("support.full"), breaches(judge(list(first).support(some(2, "Tender")))));
        ListOf.Row single = formation("Lock", one("Staff"), some(2, "Guard"));
        Verdict verdict = judge(list(single).support(one("Tender")));
        assertEquals(List.of("support.full"), breaches(verdict));
        assertTrue(verdict.findings().get(0).message().contains("here 0 times"), verdict.findings().get(0).message());
        assertEquals(List.of("support.wrong-kind"), breaches(judge(list(single).support(one("Guns")))));
    }

    @Test
    void aUnitBesideFormationsNeedsASupport() {
        ListOf.Row lock = formation("Lock", one("Staff"), some(2, "Guard"));
        assertEquals(List.of(), breaches(judge(list(lock, one("Barge")))));
        Verdict verdict = judge(list(lock, one("Guns")));
        assertEquals(List.of("unit.loose"), breaches(verdict));
        assertEquals("Move it to Line of Lock.", verdict.findings().get(0).mends().get(0).label());
    }

    @Test
    void anEmptyFormationLacksAllItsCompulsoryBillets() {
        Verdict verdict = judge(list(one("Lock")));
        assertEquals(List.of("billet.empty", "billet.empty"), breaches(verdict));
        assertEquals("Lock: billet Command takes 1 of Staff and has none; 1 more must be placed.",
                verdict.findings().get(0).message());
    }

    @Test
    void fiveVehiclesMakeAHeadquartersOfTwoAndAPlatoonOfThree() {
        // Common practice, no source: and the second compulsory platoon is then empty, which is a breach.
        BookOf cars = new BookOf("Cars").unit("Headquarters", strength(2, 10), needs(true, 1, "Car"))
                .unit("Platoon", strength(3, 15), strength(5, 25), needs(true, 1, "Car"))
                .formation("Company", billet("Command", Span.exactly(1), "Headquarters"),
                        billet("First", Span.exactly(1), "Platoon"), billet("Second", Span.exactly(1), "Platoon"));
        Ruling rules = Court.ruling(Occasion.UNKNOWN, cars);
        ListOf list = new ListOf("Nib/1", "Cars").add(formation("Company", one("Headquarters"), one("Platoon")));
        int vehicles = Requirements.of(rules, list.build(), Map.of()).stream().mapToInt(need -> need.count()).sum();
        assertEquals(5, vehicles);
        Verdict verdict = Court.judge(rules, new ListOf("Nib/1", "Cars").add(formation("Company", one("Headquarters"),
                one("Platoon"))));
        assertEquals(List.of("billet.empty"), breaches(verdict));
        assertEquals(Id.of("Cars/Company#3"), verdict.findings().get(0).rule().orElseThrow());
    }
}
