package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Weeks.BEGIN;
import static org.cantonment.stock.tests.Weeks.beat;
import static org.cantonment.stock.tests.Weeks.moved;
import static org.cantonment.stock.tests.Weeks.player;
import static org.cantonment.stock.tests.Weeks.week;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Casualties;
import org.cantonment.domain.campaign.Fund;
import org.cantonment.domain.campaign.FundCap;
import org.cantonment.domain.campaign.Funded;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.Outcome;
import org.cantonment.domain.campaign.Pays;
import org.cantonment.domain.campaign.PlayDates;
import org.cantonment.domain.campaign.Rebuilds;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.campaign.Wounds;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Rebuilding;
import org.cantonment.stock.ledger.Roll;
import org.cantonment.stock.ledger.RollBook;
import org.junit.jupiter.api.Test;

/** A lost game, half of whose victims are only wounded; every number solved by hand. */
class RollTest {

    private static final Id CARD = Id.of("Season/Card");
    private static final Id FUNDS = Id.of("Season/Funds");
    private static final Id OMBRA = player("Ombra");
    private static final LocalDate ROUND_4 = BEGIN.plusWeeks(7);
    private static final Map<Id, Integer> ROLL = Map.of(id("Marsh"), 24, id("Crank"), 4, id("Tread"), 3);

    private static Campaign campaign(FundCap... caps) {
        List<Rebuilds> rebuilds = List.of(rebuilds("Marsh", 1), rebuilds("Crank", 4), rebuilds("Tread", 7));
        Casualties card = new Casualties(CARD, "", Validity.ALWAYS, List.of(),
                List.of(new Wounds(CARD.line(1), 50, Rounding.UP, 1, Validity.ALWAYS)),
                List.of(new Pays(CARD.line(2), 10, FUNDS, true, Optional.empty(), Validity.ALWAYS),
                        new Pays(CARD.line(3), 5, FUNDS, false, Optional.of(Outcome.VICTORY), Validity.ALWAYS)),
                rebuilds, List.of(caps), List.of());
        Fund funds = new Fund(FUNDS, "", 6, List.of(), List.of(), List.of(), List.of());
        return Weeks.campaign(List.of(card), List.of(funds), round(4, ROUND_4), round(5, ROUND_4.plusWeeks(2)),
                round(6, ROUND_4.plusWeeks(4))).orElseThrow();
    }

    private static Rebuilds rebuilds(String type, int amount) {
        return new Rebuilds(CARD.child(type), List.of(id(type)), amount, FUNDS, Validity.ALWAYS);
    }

    private static Round round(int number, LocalDate from) {
        Id round = Id.of("Season", String.valueOf(number));
        return new Round(round, number, "", List.of(), List.of(), List.of(),
                Optional.of(new PlayDates(round.line(1), from, from.plusDays(5))), List.of(), Optional.empty(),
                OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
    }

    private static Week lostGame() {
        return week(8, beat("Brack", "Ombra", ROUND_4, moved("Ombra", MoveVerb.LOST, null, "7 Marsh", "2 Crank", "Tread")));
    }

    private static Week rebuilding() {
        return week(9, moved("Ombra", MoveVerb.REBUILT, null, "3 Marsh", "Crank"),
                Weeks.deed("Ombra", new Funded(false, 7, FUNDS), null));
    }

    private static Roll roll(int round, Week... weeks) {
        return RollBook.of(Optional.of(campaign()), List.of(weeks)).of(OMBRA, OptionalInt.of(round), AsOf.NOW);
    }

    private static List<Integer> left(Roll roll) {
        return List.of("Marsh", "Crank", "Tread").stream().map(type -> roll.left(id(type), ROLL.get(id(type)))).toList();
    }

    @Test
    void halfOfTheVictimsMissOneRound() {
        Roll roll = roll(5, lostGame());
        assertEquals(new Roll.Out(3, 4), roll.out(id("Marsh")));
        assertEquals(new Roll.Out(1, 1), roll.out(id("Crank")));
        assertEquals(new Roll.Out(0, 1), roll.out(id("Tread")));
        assertEquals(List.of(17, 2, 2), left(roll));
        assertEquals(16, roll.funds().get(FUNDS));
        assertEquals(List.of(24, 4, 3), left(roll(4, lostGame())));
    }

    @Test
    void theListIsMendedForSevenAndTheWoundedComeBack() {
        Roll five = roll(5, lostGame(), rebuilding());
        assertEquals(List.of(20, 3, 2), left(five));
        assertEquals(9, five.funds().get(FUNDS));
        assertEquals(List.of(24, 4, 3), left(roll(6, lostGame(), rebuilding())));
        assertEquals(List.of(), five.findings());
    }

    @Test
    void whatToRebuildIsFound() {
        Rebuilding free = Rebuilding.of(campaign(), roll(5, lostGame()), Map.of(id("Marsh"), 3, id("Crank"), 1),
                Occasion.UNKNOWN.withRound(5));
        assertEquals(Map.of(id("Marsh"), 3, id("Crank"), 1), free.rebuilt());
        assertEquals(Map.of(FUNDS, 7), free.costs());
        assertEquals(0, free.shortOf());
    }

    @Test
    void underACapTheLeastShortageIsOne() {
        FundCap cap = new FundCap(CARD.line(9), 5, FUNDS, Validity.ALWAYS);
        Rebuilding capped = Rebuilding.of(campaign(cap), roll(5, lostGame()), Map.of(id("Marsh"), 3, id("Crank"), 1),
                Occasion.UNKNOWN.withRound(5));
        assertEquals(Map.of(id("Marsh"), 3), capped.rebuilt());
        assertEquals(Map.of(id("Crank"), 1), capped.lacking());
        assertEquals(1, capped.shortOf());
    }

    @Test
    void nobodyComesBackWhoWasNotOut() {
        Roll roll = roll(5, lostGame(), week(9, moved("Ombra", MoveVerb.REBUILT, null, "5 Marsh")));
        assertEquals(List.of("roll.not-out"), roll.findings().stream().map(one -> one.code()).toList());
        assertEquals(new Roll.Out(0, 4), roll.out(id("Marsh")));
        Roll healed = roll(5, lostGame(), week(9, moved("Ombra", MoveVerb.RECOVERED, null, "5 Marsh")));
        assertEquals(new Roll.Out(2, 0), healed.out(id("Marsh")));
        assertTrue(healed.findings().isEmpty());
    }
}
