package org.cantonment.notation.tests.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Claim;
import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.Converted;
import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Doing;
import org.cantonment.domain.campaign.ForMoney;
import org.cantonment.domain.campaign.ForNothing;
import org.cantonment.domain.campaign.ForThings;
import org.cantonment.domain.campaign.Forfeit;
import org.cantonment.domain.campaign.Funded;
import org.cantonment.domain.campaign.Game;
import org.cantonment.domain.campaign.GaveUp;
import org.cantonment.domain.campaign.HandedIn;
import org.cantonment.domain.campaign.Honoured;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Moved;
import org.cantonment.domain.campaign.PassVerb;
import org.cantonment.domain.campaign.Passed;
import org.cantonment.domain.campaign.Plain;
import org.cantonment.domain.campaign.PlainVerb;
import org.cantonment.domain.campaign.Result;
import org.cantonment.domain.campaign.ResultState;
import org.cantonment.domain.campaign.Rolled;
import org.cantonment.domain.campaign.Scored;
import org.cantonment.domain.campaign.TakesRole;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.State;
import org.junit.jupiter.api.Test;

/** What was done means what its sentence says. Expectations are from the notation's own document. */
class DeedReaderTest {

    private static final String CAMPAIGN = "campaign Season\nplayer P1\nplayer P2\ntable Table-1\nfund Crowns\n"
            + "tally Objectives\nrole Attacker\nveteran Reds of P1 is Raft\nround 4\n. session Tuesday\n";
    private static final Id P1 = Id.of("Season/P1");
    private static final Id P2 = Id.of("Season/P2");

    private static Books books(String lines) {
        return Books.read(Map.of("s.campaign", CAMPAIGN, "lake.rules", "rules Lake\nunit Raft\n", "o.range",
                "range Oddbarrow in EUR\npiece Carrier\npiece Spotter\nseller Quay-Shop in SEK\nseller Toll-House\n",
                "w.week", "week 7 of Season\n" + lines));
    }

    private static Week week(String lines) {
        Books books = books(lines);
        assertEquals(List.of(), books.findings("w.week"));
        return books.meaning("w.week", Week.class);
    }

    private static Deed deed(String line) {
        return week(line).deeds().get(0);
    }

    private static Doing doing(String line) {
        return deed(line).doing();
    }

    private static Clauses clauses(String line) {
        return deed(line).clauses();
    }

    private static List<String> findings(String lines) {
        return books(lines).findings("w.week");
    }

    private static Held held(int count, String name) {
        return new Held(count, Id.of("Oddbarrow", name), Optional.empty());
    }

    @Test
    void twoPlayersMeet() {
        assertEquals(new Game(false, P2, Optional.of(new Result(5, 2))), doing("P1 beat P2 5:2\n"));
        assertEquals(new Game(true, P2, Optional.of(new Result(2, 2))), doing("P1 drew P2 2:2\n"));
        assertEquals(new Game(false, P2, Optional.empty()), doing("P1 beat P2\n"));
        assertEquals(new Forfeit(P2), doing("P1 forfeited to P2\n"));
        assertEquals(new Claim(new Result(3, 4)), doing("P1 says 3:4\n"));
        assertEquals(P1, deed("P1 beat P2\n").who());
    }

    @Test
    void onePlayerDoesSomething() {
        assertEquals(new Plain(PlainVerb.WITHDREW), doing("P1 withdrew\n"));
        assertEquals(new TakesRole(Id.of("Season/Attacker")), doing("P1 plays Attacker\n"));
        assertEquals(new HandedIn(), doing("P1 handed in\n"));
        assertEquals(new Funded(true, 5, Id.of("Season/Crowns")), doing("P1 earned 5 Crowns\n"));
        assertEquals(new Funded(false, 2, Id.of("Season/Crowns")), doing("P1 spent 2 Crowns\n"));
        assertEquals(new Scored(3, Id.of("Season/Objectives")), doing("P1 scored 3 Objectives\n"));
        assertEquals(new Rolled(List.of(4, 1, 6)), doing("P1 rolled 4, 1, 6\n"));
        assertEquals(new Honoured(Id.of("Season/Reds"), OptionalInt.of(2), Optional.of("Held the dyke")),
                doing("P1 honoured Reds 2 \"Held the dyke\"\n"));
    }

    @Test
    void thingsMove() {
        assertEquals(new Moved(MoveVerb.BUILT, List.of(held(3, "Carrier"), held(1, "Spotter"))),
                doing("P1 built 3 Carrier, Spotter\n"));
        assertEquals(new Passed(PassVerb.LENT, List.of(held(2, "Carrier")), Optional.of(P2)),
                doing("P1 lent 2 Carrier to P2\n"));
        assertEquals(new Passed(PassVerb.GAVE, List.of(held(1, "Carrier")), Optional.empty()),
                doing("P1 gave Carrier to the club\n"));
        assertEquals(new GaveUp(List.of(held(1, "Carrier"))), doing("P1 gave up Carrier\n"));
        assertEquals(new Converted(List.of(held(2, "Spotter")), held(1, "Carrier")),
                doing("P1 converted 2 Spotter into Carrier\n"));
        assertEquals(new Moved(MoveVerb.FOUND, List.of(
                new Held(1, Id.of("Oddbarrow/Carrier"), Optional.of(State.PAINTED)))), doing("P1 found Carrier painted\n"));
    }

    @Test
    void aCountGoesOnBelow() {
        assertEquals(new CountTaken(List.of(held(11, "Carrier"), held(3, "Spotter"))),
                doing("P1 counted 11 Carrier\n. 3 Spotter\n"));
    }

    @Test
    void whatIsSaidBesideADeed() {
        Clauses said = clauses("P1 beat P2 at Table-1 in Tuesday on 2031-04-15 known 2031-04-18 round 4 confirmed late "
                + "because \"rain\"\n");
        assertEquals(Optional.of(Id.of("Season/Table-1")), said.at());
        assertEquals("Tuesday", said.session().orElseThrow().name());
        assertEquals(Optional.of(LocalDate.of(2031, 4, 15)), said.on());
        assertEquals(Optional.of(LocalDate.of(2031, 4, 18)), said.known());
        assertEquals(OptionalInt.of(4), said.round());
        assertEquals(Optional.of(ResultState.CONFIRMED), said.state());
        assertTrue(said.late());
        assertEquals(Optional.of("rain"), said.because());
        assertEquals(OptionalInt.of(9), clauses("P1 lent Carrier to P2 until week 9\n").untilWeek());
    }

    @Test
    void whatWasGivenInReturn() {
        assertEquals(Optional.of(new ForNothing()), clauses("P1 gave Carrier to P2 for nothing\n").exchange());
        assertEquals(Optional.of(new ForThings(List.of(held(2, "Spotter"), held(1, "Carrier")))),
                clauses("P1 gave Carrier to P2 for 2 Spotter and Carrier\n").exchange());
        assertEquals("EUR 5.00", price("P1 sold Carrier to P2 for 5.00 EUR\n"));
    }

    @Test
    void aPriceIsInTheCurrencyOfTheSeller() {
        assertEquals("SEK 24.50", price("P1 bought Carrier for 24.50 from Quay-Shop\n"));
        assertEquals("EUR 24.50", price("P1 bought Carrier from Toll-House for 24.50\n"));
        assertEquals(List.of("2 money.currency 24.50"), findings("P1 bought Carrier for 24.50 from \"a friend\"\n"));
    }

    private static String price(String line) {
        return ((ForMoney) clauses(line).exchange().orElseThrow()).money().toString();
    }

    @Test
    void aScoreFitsItsVerb() {
        Books books = books("P1 beat P2 2:5 at Table-1\n");
        assertEquals(List.of("2 game.score beat P2 2:5"), books.findings("w.week"));
        assertTrue(books.finding("w.week").message().contains("swap"), books.finding("w.week")::message);
        assertEquals("week 7 of Season\nP1 beat P2 5:2 at Table-1\n", books.mended("w.week"));
        assertEquals(new Game(false, P2, Optional.empty()), books.meaning("w.week", Week.class).deeds().get(0).doing());
        assertEquals(1, findings("P1 drew P2 3:2\n").size());
        assertEquals(1, findings("P1 beat P2 2:2\n").size());
    }

    @Test
    void nobodyPlaysHimself() {
        Books books = books("P1 beat P1\nP2 beat P1\n");
        assertEquals(List.of("2 game.self P1"), books.findings("w.week"));
        assertEquals(List.of(P2), books.meaning("w.week", Week.class).deeds().stream().map(Deed::who).toList());
    }

    @Test
    void theSameSentenceTwiceIsAskedAbout() {
        Books books = books("P1 lost 2 Carrier\nP1 lost  2 Carrier # again?\n");
        assertEquals(List.of("3 deed.twice lost  2 Carrier"), books.findings("w.week"));
        assertEquals(1, books.meaning("w.week", Week.class).deeds().size());
        assertEquals(2, week("P1 lost 2 Carrier\nP1 lost 2 Carrier again\n").deeds().size());
        assertEquals(2, week("P1 beat P2 5:2\n. P1 lost Carrier\nP2 beat P1 5:2\n. P1 lost Carrier\n").deeds().size());
    }

    @Test
    void aCorrectionSaysWhatWasNotAndWhatWas() {
        Correction correction = week("correct week 6 \"Counted twice\"\n. not P2 lost 2 Carrier\n. but P2 beat P1\n"
                + ".. P1 lost Carrier\n").corrections().get(0);
        assertEquals(6, correction.week());
        assertEquals("Counted twice", correction.reason());
        assertEquals(List.of(true, false), correction.lines().stream().map(line -> line.not()).toList());
        assertEquals(new Moved(MoveVerb.LOST, List.of(held(1, "Carrier"))),
                correction.lines().get(1).deed().inner().get(0).doing());
    }

    @Test
    void listsAreAcceptedAndWeeksClosed() {
        Week week = week("accepted P1 round 4 on 2031-04-14 \"51ab\"\nsealed on 2031-04-20 \"b7e1\"\n. note \"Done.\"\n");
        assertEquals(7, week.number());
        assertEquals(Optional.of(Id.of("Season")), week.campaign());
        assertEquals(4, week.acceptances().get(0).round());
        assertEquals(Optional.of("51ab"), week.acceptances().get(0).seal());
        assertEquals(Optional.of(LocalDate.of(2031, 4, 20)), week.sealings().get(0).on());
    }

    @Test
    void twoNamesAndOneResultAreAWholeCampaign() {
        Books books = Books.read("t.campaign", "campaign Tuesday\nplayer Ombra\nplayer Brack\nOmbra beat Brack\n");
        assertEquals(List.of(), books.findings("t.campaign"));
        Week week = books.meaning("t.campaign", Campaign.class).weeks().get(0);
        assertEquals(1, week.number());
        assertEquals(new Game(false, Id.of("Tuesday/Brack"), Optional.empty()), week.deeds().get(0).doing());
        assertTrue(books.places("t.campaign", week.deeds().get(0).id().text()));
    }

    @Test
    void deedsOutsideOfWeeksJoinTheFirst() {
        Books books = Books.read("t.campaign", "campaign T\nplayer A\nplayer B\nA beat B\nweek 2\n. B beat A\nweek 1\n"
                + ". A lost\n. A rested\n");
        List<Week> weeks = books.meaning("t.campaign", Campaign.class).weeks();
        assertEquals(List.of(1, 2), weeks.stream().map(Week::number).toList());
        assertEquals(2, weeks.get(0).deeds().size());
    }

    @Test
    void aNameThatMeansNothingIsLeftOutAlone() {
        Books books = books("P1 lost 2 Carier, Spotter\nP9 lost Carrier\nP1 beat P2\n. P1 beats\n. P2 lost Carrier\n");
        List<Deed> deeds = books.meaning("w.week", Week.class).deeds();
        assertEquals(List.of(new Moved(MoveVerb.LOST, List.of(held(1, "Spotter"))),
                new Game(false, P2, Optional.empty())), deeds.stream().map(Deed::doing).toList());
        assertEquals(1, deeds.get(1).inner().size());
    }
}
