package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.allows;
import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.lets;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Things.needOf;
import static org.cantonment.stock.tests.Things.turns;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.Stands;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** What may stand for what. */
class LikenessTest {

    private static final Catalogue CATALOGUE = new Things().family("Wheeled", null).family("Cars", "Wheeled")
            .piece("Cart", "Wheeled").piece("Crank", "Cars").piece("Pike", "Cars").piece("Captain", null)
            .unit("Crank-Troop", "4 Crank", "1 Captain").unit("Pike-Troop", "4 Pike", "1 Captain")
            .unit("Lone-Pike", "1 Pike").catalogue();

    private static Allowance allowance(Terms terms, Fact... facts) {
        return Allowance.of(CATALOGUE, List.of(Things.card(facts)), Optional.empty(), terms);
    }

    private static Map<Id, Truth> types(Allowance allowance, String... anyOf) {
        return allowance.accepted(CATALOGUE, Things.ids(anyOf), Optional.empty()).types();
    }

    @Test
    void exactIsWhatIsNamedAndWhatLiesInANamedFamily() {
        assertEquals(Map.of(id("Crank"), Truth.EXACT), types(Allowance.EXACT, "Crank"));
        assertEquals(Set.of(id("Crank"), id("Pike"), id("Cart")), types(Allowance.EXACT, "Wheeled").keySet());
        assertEquals(Set.of(id("Crank"), id("Pike")), types(Allowance.EXACT, "Cars").keySet());
    }

    @Test
    void kindredLiesInTheSameFamilyOrInOneWithinIt() {
        Allowance kindred = allowance(Terms.ANY, allows(Level.KINDRED));
        assertEquals(Map.of(id("Crank"), Truth.EXACT, id("Pike"), Truth.KINDRED), types(kindred, "Crank"));
        assertEquals(Map.of(id("Cart"), Truth.EXACT, id("Crank"), Truth.KINDRED, id("Pike"), Truth.KINDRED),
                types(kindred, "Cart"));
        assertEquals(Set.of(id("Captain")), types(kindred, "Captain").keySet());
    }

    @Test
    void aUnitsOwnModelsStandForTheOtherUnitsOwnModels() {
        Allowance units = allowance(Terms.ANY, lets("Book/Crank-Troop", "Book/Pike-Troop"));
        Optional<Id> pikes = Optional.of(Id.of("Book/Pike-Troop"));
        Accepted cars = units.accepted(CATALOGUE, Things.ids("Pike"), pikes);
        assertEquals(Map.of(0, Set.of(id("Crank"))), cars.standIns());
        // Both have a captain: it stays one, and no car stands for it.
        assertEquals(Map.of(), units.accepted(CATALOGUE, Things.ids("Captain"), pikes).standIns());
        Optional<Id> lone = Optional.of(Id.of("Book/Lone-Pike"));
        assertEquals(Map.of(), units.accepted(CATALOGUE, Things.ids("Pike"), lone).standIns());
        assertEquals(Map.of(), units.accepted(CATALOGUE, Things.ids("Pike"), Optional.empty()).standIns());
        Optional<Id> cranks = Optional.of(Id.of("Book/Crank-Troop"));
        assertEquals(Map.of(), units.accepted(CATALOGUE, Things.ids("Crank"), cranks).standIns());
    }

    @Test
    void aTroopOfTheOneEraIsFieldedWithTheModelsOfTheOther() {
        Things shelf = new Things().piece("Crank", null).piece("Pike", null).piece("Captain", null)
                .unit("Crank-Troop", "4 Crank", "1 Captain").unit("Pike-Troop", "4 Pike", "1 Captain")
                .has("4 Crank").has("Captain");
        Turnout turnout = shelf.depot(lets("Book/Crank-Troop", "Book/Pike-Troop")).turnout(List.of(
                needOf("Pikes", "Pike-Troop", 4, "Pike"), needOf("Pikes", "Pike-Troop", 1, "Captain")), CancelToken.NEVER);
        assertTrue(turnout.complete());
        assertEquals(4, turnout.standing(Truth.STAND_IN));
        assertEquals(1, turnout.standing(Truth.EXACT));
    }

    @Test
    void familiesStandAndAreStoodFor() {
        Allowance families = allowance(Terms.ANY, lets("Cars", "Captain"));
        assertEquals(Map.of(0, Set.of(id("Crank"), id("Pike"))),
                families.accepted(CATALOGUE, Things.ids("Captain"), Optional.empty()).standIns());
        Allowance forAll = allowance(Terms.ANY, lets("Captain", "Cars"));
        assertEquals(Map.of(0, Set.of(id("Captain"))),
                forAll.accepted(CATALOGUE, Things.ids("Pike"), Optional.empty()).standIns());
        Allowance forUnit = allowance(Terms.ANY, lets("Cart", "Book/Pike-Troop"));
        assertEquals(Map.of(0, Set.of(id("Cart"))),
                forUnit.accepted(CATALOGUE, Things.ids("Captain"), Optional.of(Id.of("Book/Pike-Troop"))).standIns());
    }

    @Test
    void aLineHoldsInItsRoundsAndWithLeaveThatMayBeCountedOn() {
        Fact early = new Stands(Id.of("Book/Card#1"), Things.ids("Crank"), Things.ids("Cart"), OptionalInt.empty(), true,
                Validity.of(new InRounds(1, 3)));
        Terms second = Terms.at(Occasion.UNKNOWN.withRound(2), EraOrder.NONE);
        assertEquals(1, allowance(second, early).standIns().size());
        assertEquals(0, allowance(second.withoutLeave(), early).standIns().size());
        assertEquals(0, allowance(Terms.at(Occasion.UNKNOWN.withRound(4), EraOrder.NONE), early).standIns().size());
        assertEquals(0, allowance(second.noLessThan(Level.KINDRED), early).standIns().size());
    }

    @Test
    void theRoundSaysHowTrueAndTheStrictestCardElse() {
        Fact line = lets("Crank", "Cart");
        List<Likeness> cards = List.of(Things.card(allows(Level.KINDRED), line), Things.card(allows(Level.EXACT)));
        Allowance plain = Allowance.of(CATALOGUE, cards, Optional.empty(), Terms.ANY);
        assertEquals(Level.EXACT, plain.level());
        assertEquals(1, plain.standIns().size());
        Allowance kindred = Allowance.of(CATALOGUE, cards, Optional.of(round(Level.KINDRED)), Terms.ANY);
        assertEquals(Level.KINDRED, kindred.level());
        assertEquals(0, kindred.standIns().size());
        Allowance own = Allowance.of(CATALOGUE, cards, Optional.of(round(Level.EXACT, line)), Terms.ANY);
        assertEquals(Level.EXACT, own.level());
        assertEquals(1, own.standIns().size());
        Allowance all = Allowance.of(CATALOGUE, cards, Optional.of(round(Level.STAND_IN)), Terms.ANY);
        assertEquals(1, all.standIns().size());
    }

    private static Round round(Level level, Fact... own) {
        return new Round(Id.of("Season/1"), 1, "", List.of(), List.of(), List.of(), Optional.empty(), List.of(),
                Optional.of(level), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(),
                List.of(own), List.of(), List.of());
    }

    @Test
    void aShareIsOfWhatIsAskedForRoundedDown() {
        Things shelf = new Things().piece("Pike", null).piece("Crank", null).has("9 Crank").has("2 Pike");
        Turnout turnout = shelf.depot(lets("Crank", "Pike", OptionalInt.of(40)))
                .turnout(List.of(need("One", 4, "Pike"), need("Two", 3, "Pike")), CancelToken.NEVER);
        // 40 percent of 7 are 2: two pikes and two more, three short.
        assertEquals(4, turnout.filled());
        assertEquals(2, turnout.standing(Truth.STAND_IN));
        Reason.Block block = (Reason.Block) turnout.reasons().get(0);
        assertEquals(List.of(Reason.Kind.PIECES, Reason.Kind.SHARE),
                block.from().stream().map(Reason.Source::kind).toList());
        assertEquals(List.of(2, 2), block.from().stream().map(Reason.Source::pieces).toList());
    }

    @Test
    void spareFiguresAreWorkedOverOnlyWhereNothingTruerIsThere() {
        Things shelf = new Things().piece("Spotter", null).piece("Officer", null).piece("Other", null)
                .has("6 Spotter").has("Officer");
        Fact rate = turns("2 Spotter", "1 Officer", OptionalInt.of(2));
        Turnout turnout = shelf.depot(rate)
                .turnout(List.of(need("A", 2, "Officer"), need("B", 4, "Spotter")), CancelToken.NEVER);
        assertTrue(turnout.complete());
        assertEquals(1, turnout.worked().get(0).times());
        assertEquals(1, turnout.standing(Truth.CONVERSION));
        Turnout many = shelf.depot(rate).turnout(List.of(need("A", 4, "Officer")), CancelToken.NEVER);
        assertEquals(1, many.lacking());
        assertEquals(List.of(Reason.Kind.PIECES, Reason.Kind.CONVERSION),
                ((Reason.Block) many.reasons().get(0)).from().stream().map(Reason.Source::kind).toList());
        Turnout torn = shelf.depot(rate)
                .turnout(List.of(need("A", 2, "Officer"), need("B", 5, "Spotter")), CancelToken.NEVER);
        assertEquals(1, torn.lacking());
        assertTrue(torn.proven());
    }
}
