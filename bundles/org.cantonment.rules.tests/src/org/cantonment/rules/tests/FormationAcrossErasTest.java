package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Court.judge;
import static org.cantonment.rules.tests.Court.ruling;
import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.becomes;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.Verdict;
import org.junit.jupiter.api.Test;

/** One squadron written for one era and judged in each of three; all sums were worked out by hand. */
class FormationAcrossErasTest {

    private static final int LIMIT = 100;

    private final BookOf book = new BookOf("Causey").eras("Reed-Year", "Dyke-War", "Long-Thaw")
            .unit("Staff", strength(1, 10), strength(1, 12).from("Long-Thaw"))
            .unit("Tread-Troop", strength(3, 24), strength(5, 40), strength(3, 27).from("Long-Thaw"),
                    strength(5, 45).from("Long-Thaw"))
            .unit("Crank-Troop", strength(4, 20), available().to("Dyke-War"), becomes("Pike-Car-Troop"))
            .unit("Pike-Car-Troop", strength(4, 26), available().from("Dyke-War"))
            .unit("Marsh-Scouts", strength(2, 8), available().from("Dyke-War"))
            .formation("Squadron", billet("Command", Span.exactly(1), "Staff"),
                    billet("Line", Span.of(2, 3), "Tread-Troop", "Crank-Troop", "Pike-Car-Troop"),
                    billet("Scouts", Span.of(0, 1), "Marsh-Scouts"));

    private static ListOf squadron(ListOf.Row... rows) {
        return new ListOf("Ombra/1", "Causey").add(formation("Squadron", rows));
    }

    private static ListOf written() {
        return squadron(one("Staff"), one("Tread-Troop").of(5), one("Crank-Troop"), one("Crank-Troop"),
                one("Marsh-Scouts"));
    }

    private Verdict in(String era, ListOf list) {
        return judge(ruling(Court.in("Causey/" + era), book), list, LIMIT);
    }

    @Test
    void inItsOwnEraItIsLegalAndCosts98() {
        Verdict verdict = in("Dyke-War", written());
        assertEquals(List.of(), verdict.findings());
        assertEquals(98, verdict.points());
    }

    @Test
    void inTheEraBeforeOnlyTheScoutsAreTooEarly() {
        Verdict verdict = in("Reed-Year", written());
        assertEquals(List.of("era.not-yet"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals(Id.of("Ombra/1#6"), finding.at());
        assertEquals(Id.of("Causey/Marsh-Scouts#2"), finding.rule().orElseThrow());
        assertEquals("Marsh-Scouts: not yet in Reed-Year; available from Dyke-War.", finding.message());
        Verdict mended = in("Reed-Year", squadron(one("Staff"), one("Tread-Troop").of(5), one("Crank-Troop"),
                one("Crank-Troop")));
        assertTrue(mended.legal());
        assertEquals(90, mended.points());
    }

    @Test
    void inTheEraAfterBothCrankTroopsAreGoneAndTheSuccessorIsNamed() {
        Verdict verdict = in("Long-Thaw", written());
        assertEquals(List.of("era.no-longer", "era.no-longer"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals("Crank-Troop: no longer in Long-Thaw; available to Dyke-War; its place is taken by "
                + "Pike-Car-Troop.", finding.message());
        assertEquals(new ReplaceUnit(Id.of("Ombra/1#4"), Id.of("Causey/Pike-Car-Troop"), OptionalInt.of(4)),
                finding.mends().get(0).actions().get(0));
    }

    @Test
    void strikingBothLeavesACompulsoryPlaceAndNamesTheCheapestFill() {
        Verdict verdict = in("Long-Thaw", squadron(one("Staff"), one("Tread-Troop").of(5), one("Marsh-Scouts")));
        assertEquals(List.of("billet.short"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals(Id.of("Causey/Squadron#2"), finding.rule().orElseThrow());
        AddUnit add = (AddUnit) finding.mends().get(0).actions().get(0);
        assertEquals(Id.of("Causey/Pike-Car-Troop"), add.unit());
        assertEquals("Line", add.billet().orElseThrow());
        assertEquals(1, add.count());
    }

    @Test
    void theThreeWaysOutCost91And92And99() {
        assertLegal(91, squadron(one("Staff"), one("Tread-Troop").of(5), one("Pike-Car-Troop"), one("Marsh-Scouts")));
        assertLegal(92, squadron(one("Staff"), one("Tread-Troop").of(5), one("Tread-Troop").of(3),
                one("Marsh-Scouts")));
        assertLegal(99, squadron(one("Staff"), one("Tread-Troop").of(3), one("Pike-Car-Troop"),
                one("Pike-Car-Troop"), one("Marsh-Scouts")));
    }

    private void assertLegal(long points, ListOf list) {
        Verdict verdict = in("Long-Thaw", list);
        assertEquals(List.of(), verdict.findings());
        assertEquals(points, verdict.points());
    }

    @Test
    void theStraightSwapIs17OverTheLimit() {
        Verdict verdict = in("Long-Thaw", squadron(one("Staff"), one("Tread-Troop").of(5), one("Pike-Car-Troop"),
                one("Pike-Car-Troop"), one("Marsh-Scouts")));
        assertEquals(117, verdict.points());
        assertEquals(List.of("points.over"), breaches(verdict));
        assertEquals("The list uses 117 points of 100: 17 too many.", verdict.findings().get(0).message());
        assertTrue(verdict.findings().get(0).mends().get(0).label().startsWith("Take Tread-Troop at strength 3"));
    }

    @Test
    void onlyTheErasThatPermitAUnitTakeIt() {
        // Common practice, no source: a unit permitted in one era only is a breach in the others.
        BookOf only = new BookOf("Only").eras("First", "Second", "Third").unit("Raft", strength(1, 5),
                available().in("Second"));
        ListOf list = new ListOf("Nib/1", "Only").add(one("Raft"));
        assertEquals(List.of("era.only-in"), breaches(judge(ruling(Court.in("Only/First"), only), list)));
        assertEquals(List.of(), judge(ruling(Court.in("Only/Second"), only), list).findings(Severity.BREACH));
        assertEquals(List.of("era.only-in"), breaches(judge(ruling(Court.in("Only/Third"), only), list)));
    }
}
