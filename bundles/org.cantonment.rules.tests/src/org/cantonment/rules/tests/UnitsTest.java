package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Court.breaches;
import static org.cantonment.rules.tests.Court.codes;
import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.becomes;
import static org.cantonment.rules.tests.Line.called;
import static org.cantonment.rules.tests.Line.costs;
import static org.cantonment.rules.tests.Line.dearer;
import static org.cantonment.rules.tests.Line.needs;
import static org.cantonment.rules.tests.Line.option;
import static org.cantonment.rules.tests.Line.side;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.strengths;
import static org.cantonment.rules.tests.Line.without;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Act;
import org.cantonment.domain.rules.Direction;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.muster.TallyPart;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** Units: points, strengths, options, eras, sides and layers over them; verdicts worked out by hand. */
class UnitsTest {

    private static BookOf lake() {
        return new BookOf("Lake").eras("Ferry-Year", "Causeway", "Long-Thaw").side("Weir").side("Fen")
                .unit("Guns", strength(3, 14), strength(5, 22), strength(3, 16).from("Causeway"),
                        strength(3, 15).in("Long-Thaw"), needs(true, 1, "Wagon"),
                        option("Long", 2, 2, "Wagon", "Long-Wagon"), option("Mast", 3),
                        option("Mast", 4).from("Causeway"), option("Sledge", 1).in("Ferry-Year"))
                .unit("Scouts", strengths(2, 4, 2), dearer(3, 1), called("Marsh scouts").from("Causeway"))
                .unit("Launch", strength(1, 15), side("Weir"), available().from("Causeway").to("Causeway"))
                .unit("Barge", costs(12), option("Rails", List.of(), List.of("Deck")),
                        option("Crane", List.of("Rails"), List.of("Deck")))
                .unit("Patrol", strength(3, 6), becomes("Cars").from("Causeway")).unit("Cars", strength(3, 9))
                .unit("Raft");
    }

    private static Ruling in(String era, BookOf... books) {
        return Court.ruling(Court.in("Lake/" + era), books);
    }

    private static ListOf list(ListOf.Row... rows) {
        return new ListOf("Anna/4", "Lake").add(rows);
    }

    @Test
    void theNearestEraPricesAUnit() {
        assertEquals(14, Court.judge(in("Ferry-Year", lake()), list(one("Guns"))).points());
        assertEquals(16, Court.judge(in("Causeway", lake()), list(one("Guns"))).points());
        assertEquals(15, Court.judge(in("Long-Thaw", lake()), list(one("Guns"))).points());
        assertEquals(22, Court.judge(in("Long-Thaw", lake()), list(one("Guns").of(5))).points());
        assertEquals(5, Court.judge(in("Ferry-Year", lake()), list(one("Guns").with(1, "Mast").with(1, "Long")))
                .points() - 14);
        assertEquals(4, Court.judge(in("Long-Thaw", lake()), list(one("Guns").with(1, "Mast"))).points() - 15);
    }

    @Test
    void theTallyOpensIntoItsParts() {
        Verdict verdict = Court.judge(in("Ferry-Year", lake()), list(some(2, "Guns").of(5).with(2, "Long").with(1, "Mast"),
                one("Scouts"), some(2, "Scouts").of(3)));
        assertEquals(List.of("strength 5", "2 Long", "Mast"), words(verdict, 0));
        assertEquals(List.of(44L, 8L, 6L), points(verdict, 0));
        assertEquals(List.of(4L), points(verdict, 1));
        assertEquals(List.of("strength 3", "dearer beyond 1"), words(verdict, 2));
        assertEquals(List.of(12L, 6L), points(verdict, 2));
        assertEquals(58 + 4 + 18, verdict.points());
    }

    private static List<String> words(Verdict verdict, int line) {
        return verdict.tally().lines().get(line).parts().stream().map(TallyPart::words).toList();
    }

    private static List<Long> points(Verdict verdict, int line) {
        return verdict.tally().lines().get(line).parts().stream().map(TallyPart::points).toList();
    }

    @Test
    void aStrengthThatIsNotOfferedNamesTheNearest() {
        Verdict verdict = Court.judge(in("Ferry-Year", lake()), list(one("Guns").of(4)));
        assertEquals(List.of("strength.not-offered"), breaches(verdict));
        Finding finding = verdict.findings().get(0);
        assertEquals("No strength 4 for Guns, only 3, 5; counted as 3.", finding.message());
        assertEquals(new SetStrength(Id.of("Anna/4#1"), 3), finding.mends().get(0).actions().get(0));
        assertEquals(new SetStrength(Id.of("Anna/4#1"), 5), finding.mends().get(1).actions().get(0));
    }

    @Test
    void optionsAreKnownAndCountedAndNeedOneAnother() {
        assertEquals(List.of("option.too-many"), in("Ferry-Year", one("Guns").with(3, "Long")));
        assertEquals(List.of(), in("Ferry-Year", one("Guns").with(1, "Sledge")));
        assertEquals(List.of("option.not-now"), in("Causeway", one("Guns").with(1, "Sledge")));
        assertEquals(List.of("option.unknown"), in("Causeway", one("Guns").with(1, "Wings")));
        assertEquals(List.of("option.needs"), in("Causeway", one("Barge").with(1, "Crane")));
        assertEquals(List.of("option.one-of"), in("Causeway", one("Barge").with(1, "Rails").with(1, "Crane")));
        Verdict verdict = Court.judge(in("Causeway", lake()), list(one("Guns").with(3, "Long")));
        assertEquals(new SetOption(Id.of("Anna/4#1"), "Long", 2),
                verdict.findings().get(0).mends().get(0).actions().get(0));
    }

    private static List<String> in(String era, ListOf.Row row) {
        return breaches(Court.judge(in(era, lake()), list(row)));
    }

    @Test
    void erasSayNotYetAndNoLonger() {
        assertEquals(List.of("era.not-yet"), in("Ferry-Year", one("Launch")));
        assertEquals(List.of(), in("Causeway", one("Launch")));
        assertEquals(List.of("era.no-longer"), in("Long-Thaw", one("Launch")));
        assertEquals(List.of(), in("Ferry-Year", one("Patrol")));
        assertEquals(List.of("era.no-longer"), in("Long-Thaw", one("Patrol")));
        Verdict verdict = Court.judge(in("Long-Thaw", lake()), list(one("Patrol")));
        assertEquals("Take Cars of 3 instead, 9 points each.", verdict.findings().get(0).mends().get(0).label());
    }

    @Test
    void anUnpricedUnitCountsNothingAndIsMentioned() {
        Verdict verdict = Court.judge(in("Causeway", lake()), list(one("Raft").of(7)));
        assertEquals(0, verdict.points());
        assertEquals(List.of("points.unpriced"), codes(verdict, Severity.NOTE));
    }

    @Test
    void aUnitOfTheOtherSideIsRefused() {
        Ruling ruling = in("Causeway", lake());
        Situation fen = Situation.BARE.withPlayer(Id.of("Anna"), Optional.of(Id.of("Lake/Fen")));
        Situation weir = Situation.BARE.withPlayer(Id.of("Anna"), Optional.of(Id.of("Lake/Weir")));
        assertEquals(List.of("unit.wrong-side"), breaches(Judge.judge(ruling, list(one("Launch")).build(), fen)));
        assertEquals(List.of(), breaches(Judge.judge(ruling, list(one("Launch")).build(), weir)));
    }

    @Test
    void layersForbidAllowAndRename() {
        BookOf house = new BookOf("House", "Lake").withdraw(Act.FORBID, "Lake/Barge").withdraw(Act.ALLOW, "Lake/Launch");
        Ruling ruling = in("Ferry-Year", lake(), house);
        Verdict verdict = Court.judge(ruling, list(one("Barge"), one("Launch")));
        assertEquals(List.of("unit.forbidden"), breaches(verdict));
        assertEquals("Barge: forbidden by House.", verdict.findings().get(0).message());
        BookOf above = new BookOf("Above", "House").withdraw(Act.ALLOW, "Lake/Barge");
        assertEquals(List.of(), breaches(Court.judge(in("Ferry-Year", lake(), above, house), list(one("Barge")))));
        assertEquals("Marsh scouts", in("Causeway", lake()).title(Id.of("Lake/Scouts")));
        assertEquals("Scouts", in("Ferry-Year", lake()).title(Id.of("Lake/Scouts")));
    }

    @Test
    void aLayersLineTakesThePlaceOfTheSameLineBelow() {
        BookOf house = new BookOf("House", "Lake").change(Direction.CHANGE, "Lake/Guns", strength(3, 11),
                option("Long", 1, 5, "Lake/Wagon", "Lake/Long-Wagon"), without("Mast"));
        Ruling ruling = in("Long-Thaw", lake(), house);
        assertEquals(11, Court.judge(ruling, list(one("Guns"))).points());
        assertEquals(16, Court.judge(ruling, list(one("Guns").with(1, "Long"))).points());
        assertEquals(List.of("option.not-now"), breaches(Court.judge(ruling, list(one("Guns").with(1, "Mast")))));
        assertEquals(List.of("option.too-many"), breaches(Court.judge(ruling, list(one("Guns").with(2, "Long")))));
        BookOf liar = new BookOf("Liar", "Lake").change(Direction.TIGHTEN, "Lake/Guns", strength(5, 21));
        assertEquals(List.of("layer.direction"), in("Long-Thaw", lake(), liar).findings().stream().map(Finding::code)
                .toList());
        assertEquals(22, Court.judge(in("Long-Thaw", lake(), liar), list(one("Guns").of(5))).points());
    }

    @Test
    void twoLinesForTheSameTimeAreMentioned() {
        BookOf book = new BookOf("Lake").unit("Guns", strength(3, 14), strength(3, 15));
        Ruling ruling = Court.ruling(Occasion.UNKNOWN, book);
        assertEquals(List.of("rule.twice"), ruling.findings().stream().map(Finding::code).toList());
        assertEquals(14, Court.judge(ruling, list(one("Guns"))).points());
    }

    @Test
    void aListNeedsItsPiecesOnTheTable() {
        List<Requirement> needs = Requirements.of(in("Ferry-Year", lake()),
                list(some(2, "Guns").of(5).with(2, "Long")).build(), Map.of());
        Id entry = Id.of("Anna/4#1");
        Optional<Id> guns = Optional.of(Id.of("Lake/Guns"));
        assertEquals(List.of(new Requirement(entry, guns, 6, List.of(Id.of("Lake/Wagon"))),
                new Requirement(entry, guns, 4, List.of(Id.of("Lake/Long-Wagon")))), needs);
    }

    @Test
    void countsBeyondReasonAreRefusedAndNeverOverflow() {
        ListOf list = list(some(2_000_000_000, "Guns"), some(1_000_000, "Scouts"));
        Verdict verdict = Court.judge(in("Ferry-Year", lake()), list, 100);
        assertEquals(List.of("points.over", "count.too-large"), breaches(verdict));
        assertEquals(14_000_000L + 4_000_000L + 3L * 999_999L, verdict.points());
    }

    @Test
    void nobodyWaitsForAnAnswerThatIsNoLongerWanted() {
        Situation gone = Situation.BARE.withCancel(() -> true);
        assertThrows(Cancelled.class, () -> Judge.judge(in("Causeway", lake()), list(one("Guns")).build(), gone));
    }
}
