package org.cantonment.notation.tests.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.After;
import org.cantonment.domain.campaign.Bonus;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Casualties;
import org.cantonment.domain.campaign.Chain;
import org.cantonment.domain.campaign.Destroys;
import org.cantonment.domain.campaign.Due;
import org.cantonment.domain.campaign.DueWhat;
import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.FromCheck;
import org.cantonment.domain.campaign.FromLimit;
import org.cantonment.domain.campaign.FromRule;
import org.cantonment.domain.campaign.Meeting;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Outcome;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Scoring;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Rounding;
import org.junit.jupiter.api.Test;

/** A campaign means what its text says. Expectations are from the notation's own document. */
class CampaignReaderTest {

    private static final String HEAD = "campaign Season \"The season\" from 2031-03-03\nplayer P1 \"Ombra\"\nplayer P2\n";
    private static final String RULES = "rules Lake\nside Weir\nera Dyke-War\nunit Raft\nlimit Few\n. at most 1 of Raft\n";

    private static Books books(String cards) {
        return Books.read(Map.of("s.campaign", HEAD + cards, "lake.rules", RULES,
                "o.range", "range Oddbarrow\npiece Carrier\n"));
    }

    private static Campaign campaign(String cards) {
        Books books = books(cards);
        assertEquals(List.of(), books.findings("s.campaign"));
        return books.meaning("s.campaign", Campaign.class);
    }

    private static List<String> findings(String cards) {
        return books(cards).findings("s.campaign");
    }

    private static Id id(String name) {
        return Id.of("Season", name);
    }

    @Test
    void aCampaignHasANameADayAndRules() {
        Campaign campaign = campaign("plays Lake\n");
        assertEquals("The season", campaign.label());
        assertEquals(Optional.of(LocalDate.of(2031, 3, 3)), campaign.from());
        assertEquals(List.of(Id.of("Lake")), campaign.plays());
        assertEquals(List.of("Ombra", ""), campaign.players().stream().map(Player::label).toList());
    }

    @Test
    void aPlayerHasASideAndEvenings() {
        Player player = campaign("club Moor\nplayer P3\n. side Weir\n. club Moor\n. rated 1450\n. joins round 2\n"
                + ". leaves round 6\n. plays on Tuesday, Friday\n. newcomer\n").players().get(2);
        assertEquals(Optional.of(Id.of("Lake/Weir")), player.side());
        assertEquals(Optional.of(id("Moor")), player.club());
        assertEquals(OptionalInt.of(1450), player.rated());
        assertEquals(OptionalInt.of(2), player.joins());
        assertEquals(OptionalInt.of(6), player.leaves());
        assertEquals(List.of("Tuesday", "Friday"), player.evenings());
        assertTrue(player.newcomer());
    }

    @Test
    void aRoundHasDatesAndLimits() {
        Round round = campaign("role Attacker\nround 4 \"The causeway\"\n. era Dyke-War\n. limit 100 points\n"
                + ". limit 120 points for Attacker, P2\n. lists by 2031-04-13 at 20:00\n. protests by 2031-04-27\n"
                + ". play from 2031-04-15 to 2031-04-20\n. likeness kindred\n. turnout 75 percent\n"
                + ". budget 40.00 EUR saved\n. published on 2031-04-14 \"ab cd\"\n").rounds().get(0);
        assertEquals(id("round-4"), round.id());
        assertEquals(List.of(Id.of("Lake/Dyke-War")), round.eras());
        assertEquals(List.of(new PointsLimit(id("round-4#2"), 100, List.of()),
                new PointsLimit(id("round-4#3"), 120, List.of(id("Attacker"), id("P2")))), round.limits());
        assertEquals(new Due(id("round-4#4"), DueWhat.LISTS, LocalDate.of(2031, 4, 13),
                Optional.of(LocalTime.of(20, 0))), round.dues().get(0));
        assertEquals(LocalDate.of(2031, 4, 20), round.play().orElseThrow().to());
        assertEquals(Optional.of(Level.KINDRED), round.likeness());
        assertEquals(OptionalInt.of(75), round.turnoutPercent());
        assertEquals("EUR 40.00", round.budget().orElseThrow().money().toString());
        assertTrue(round.budget().orElseThrow().saved());
        assertEquals(Optional.of("ab cd"), round.published().orElseThrow().seal());
    }

    @Test
    void eveningsStandInPlayingOrder() {
        Round round = campaign("round 1\n. session Late on 2031-04-17 at 19:00\n. session Early on 2031-04-15 at 19:00\n"
                + ". session Noon on 2031-04-15 at 12:00\n. P1 meets P2 in Early\n").rounds().get(0);
        assertEquals(List.of("Noon", "Early", "Late"),
                round.sessions().stream().map(session -> session.id().name()).toList());
        assertEquals(new Meeting(id("P2")), round.deeds().get(0).doing());
        assertEquals(Optional.of(round.sessions().get(1).id()), round.deeds().get(0).clauses().session());
    }

    @Test
    void aLimitForNobodyIsNoLimitForAll() {
        Books books = books("round 4\n. limit 120 points for Atacker\n");
        assertEquals(List.of("5 name.unknown Atacker"), books.findings("s.campaign"));
        assertEquals(List.of(), books.meaning("s.campaign", Campaign.class).rounds().get(0).limits());
    }

    @Test
    void datesOfARoundComeInTheirOrder() {
        Books books = books("round 4\n. reveal by 2031-04-12\n. lists by 2031-04-13\n");
        assertEquals(List.of("5 round.order 2031-04-12"), books.findings("s.campaign"));
        assertEquals(Severity.CAUTION, books.finding("s.campaign").severity());
        assertEquals(List.of("6 round.order 2031-04-13"),
                findings("round 4\n. lists by 2031-04-13 at 20:00\n. reveal by 2031-04-13 at 18:00\n"));
        assertEquals(List.of(), findings("round 4\n. lists by 2031-04-13 at 20:00\n. reveal by 2031-04-13\n"));
    }

    @Test
    void aRoundAndAWeekStandOnce() {
        assertEquals(List.of("5 said.twice 4"), findings("round 4\nround 4\n"));
        assertEquals(List.of("5 said.twice 2"), findings("week 2\nweek 2\n"));
        assertEquals(List.of("4 number.range 0"), findings("round 0\n"));
    }

    @Test
    void aScoringAwardsAndParts() {
        Scoring scoring = campaign("tally Objectives\nscoring Three-One\n. win 3, draw 1\n. loss 0\n"
                + ". bonus 0.5 per 2 Objectives at most 1.5\n. ties by Between-Tied, Sum with Cut 1 and Best yes\n"
                + ". chain restarts\n. withdrawal under 50 percent struck\n").scorings().get(0);
        assertEquals(List.of("WIN 3", "DRAW 1", "LOSS 0"),
                scoring.scores().stream().map(score -> score.reward() + " " + score.points()).toList());
        assertEquals(List.of(new Bonus(id("Three-One#3"), new BigDecimal("0.5"), 2, id("Objectives"),
                Optional.of(new BigDecimal("1.5")))), scoring.bonuses());
        assertEquals(List.of("Between-Tied", "Sum"), scoring.ties().stream().map(step -> step.name()).toList());
        assertEquals(new NumberValue(BigDecimal.ONE, false), scoring.ties().get(1).settings().get(0).value());
        assertEquals(Chain.RESTARTS, scoring.chain());
        assertTrue(scoring.struckout().orElseThrow().struck());
        assertEquals(List.of("5 said.twice win 2"), findings("scoring S\n. win 3, win 2\n"));
    }

    @Test
    void whatGamesCost() {
        Casualties cost = campaign("fund Crowns\n. start 6\ncasualties Hard\n. defeat loses 1 in 4 of Raft by Roll\n"
                + ". either loses 10 percent\n. wounds 50 percent rounded up for 1 round\n. pays 10 Crowns per game\n"
                + ". pays 5 Crowns for victory\n. rebuilds Carrier for 7 Crowns\n. at most 5 Crowns each round\n")
                .casualties().get(0);
        Destroys first = cost.destroys().get(0);
        assertEquals(List.of(OptionalInt.of(1), OptionalInt.of(4), OptionalInt.empty()),
                List.of(first.count(), first.per(), first.percent()));
        assertEquals(List.of(Id.of("Lake/Raft")), first.what());
        assertEquals(Optional.of("Roll"), first.means());
        assertEquals(OptionalInt.of(10), cost.destroys().get(1).percent());
        assertEquals(Rounding.UP, cost.wounds().get(0).rounding());
        assertEquals(List.of(Optional.empty(), Optional.of(Outcome.VICTORY)),
                cost.pays().stream().map(pays -> pays.outcome()).toList());
        assertEquals(7, cost.rebuilds().get(0).amount());
        assertEquals(id("Crowns"), cost.caps().get(0).fund());
        assertEquals(6, campaign("fund Crowns\n. start 6\n").funds().get(0).start());
        assertEquals(List.of("5 number.range 0"), findings("casualties Hard\n. defeat loses 1 in 0\n"));
    }

    @Test
    void theOrganisersOrders() {
        Campaign campaign = campaign("rate 1 EUR is 11.42 SEK\nshow lists to all after reveal\nshow costs to P1\n"
                + "excuse P2 from Few in round 2 by P1 \"Birthday\"\nveteran Reds of P1 is Raft\n"
                + "pairing Berger with Rounds 3\ncheck Painted caution with Share 50 percent from round 4\n");
        assertEquals("SEK 11.42", campaign.rates().get(0).other().toString());
        assertEquals(After.REVEAL, campaign.shows().get(0).after());
        assertEquals(List.of(id("P1")), campaign.shows().get(1).players());
        assertEquals("Birthday", campaign.excuses().get(0).reason());
        assertEquals(new FromRule(Id.of("Lake/Few"), Optional.empty()), campaign.excuses().get(0).from());
        assertEquals(Id.of("Lake/Raft"), campaign.veterans().get(0).unit());
        assertEquals("Berger", campaign.pairings().get(0).name());
        assertEquals(Optional.of(Severity.CAUTION), campaign.checks().get(0).severity());
        assertFalse(campaign.checks().get(0).when().always());
    }

    @Test
    void thereIsSomethingToLetPlayersOff() {
        String checks = "check Painted to round 3\ncheck Painted caution from round 4\n";
        assertEquals(List.of(new FromLimit(), new FromCheck("Painted", Optional.empty()),
                new FromCheck("Painted", Optional.of(Id.of("Lake/Raft"))),
                new FromRule(Id.of("Lake/Few"), Optional.of(Id.of("Lake/Raft")))),
                campaign(checks + "excuse P2 from the limit in round 3 by P1 \"Late\"\nexcuse P2 from Painted by P1\n"
                        + "excuse P2 from Painted at Raft from round 2 by P1\nexcuse P2 from Few at Raft by P1\n").excuses().stream().map(Excuse::from).toList());
        assertEquals(List.of("4 name.unknown Painted"), findings("excuse P2 from Painted by P1\n"));
        assertEquals(List.of("4 name.unknown Peinted"), findings("excuse P2 from Peinted by P1\n" + checks));
        assertEquals(List.of("4 form.word at"), findings("excuse P2 from the limit at Raft by P1\n"));
        assertEquals(List.of(), books("excuse P2 from Painted at Reft by P1\n" + checks)
                .meaning("s.campaign", Campaign.class).excuses(), "for one unit that nobody knows is not for all");
    }

    @Test
    void aCheckOfOnesOwnCampaignComesBeforeARuleOfItsNameAndOfAnotherIsNone() {
        Books books = Books.read(Map.of("lake.rules", RULES, "s.campaign", HEAD + "excuse P2 from Few by P1\n"
                + "excuse P2 from Lake/Few by P1\nexcuse P2 from Season/Few by P1\ncheck Few\n",
                "t.campaign", "campaign Other\nplayer P3\ncheck Fords\nexcuse P3 from Few by P3\n",
                "u.campaign", "campaign Third\nplayer P4\nexcuse P4 from Fords by P4\n"));
        assertEquals(List.of(), books.findings("s.campaign"));
        assertEquals(List.of(new FromCheck("Few", Optional.empty()),
                new FromRule(Id.of("Lake/Few"), Optional.empty()), new FromCheck("Few", Optional.empty())),
                books.meaning("s.campaign", Campaign.class).excuses().stream().map(Excuse::from).toList());
        assertEquals(List.of(new FromRule(Id.of("Lake/Few"), Optional.empty())),
                books.meaning("t.campaign", Campaign.class).excuses().stream().map(Excuse::from).toList());
        assertEquals(List.of("3 name.unknown Fords"), books.findings("u.campaign"));
    }

    @Test
    void aRateSetsTwoCurrenciesAgainstEachOther() {
        assertEquals(List.of("4 number.range rate 1 EUR is 2 EUR"), findings("rate 1 EUR is 2 EUR\n"));
        assertEquals(List.of("4 money.currency 1"), findings("rate 1 is 2 EUR\n"));
    }

    @Test
    void aBookOfNamesNamesEachPlayerOnce() {
        Books books = Books.read(Map.of("s.campaign", HEAD, "n.campaign",
                "names of Season\nP1 \"Dora\"\nP2 \"Emil\"\nP1 \"Frida\"\nround 3\n"));
        assertEquals(List.of("4 said.twice P1", "5 line.place round 3"), books.findings("n.campaign"));
        NamesBook names = books.meaning("n.campaign", NamesBook.class);
        assertEquals(Id.of("Season"), names.campaign());
        assertEquals(List.of("Dora", "Emil"), names.names().stream().map(name -> name.name()).toList());
    }

    @Test
    void aLineBegunAtTheEndOfTheFileIsTooShort() {
        assertEquals(List.of("4 form.short e"), findings("excuse"));
        assertEquals(List.of("5 form.short d"), findings("round 1\nround"));
    }
}
