package org.cantonment.buying.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.buying.market.Loads;
import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Cost;
import org.cantonment.buying.reach.Costs;
import org.cantonment.buying.reach.Formation;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.buying.reach.Formation.Room;
import org.cantonment.buying.reach.Near;
import org.cantonment.buying.reach.Reach;
import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** How far a shelf is from formations, by hand and against every filling there is. */
class ReachTest {

    @Test
    void noFillingIsNearer() {
        int now = 0;
        int away = 0;
        int never = 0;
        for (int seed = 0; seed < 600; seed++) {
            ReachCase drawn = new ReachCase(seed);
            Catalogue catalogue = drawn.shop.market().catalogue();
            Depot depot = Depot.of(catalogue, drawn.supply, drawn.allowance);
            for (Strength strength : Strength.values()) {
                Set<Map<List<Id>, Integer>> fillings = drawn.fillings(Id.of("Book", "Whole"), strength);
                if (fillings.size() > 150) {
                    continue;
                }
                Optional<Near> near = new Reach(catalogue, drawn.supply).near(drawn.asked(strength), CancelToken.NEVER);
                OptionalInt least = fillings.stream().map(one -> depot.turnout(ReachCase.needs(one), CancelToken.NEVER))
                        .mapToInt(Turnout::lacking).min();
                String about = "seed " + seed + ", " + strength;
                assertEquals(least.isPresent(), near.isPresent(), about);
                if (near.isEmpty()) {
                    never++;
                    continue;
                }
                assertEquals(least.getAsInt(), near.get().lacking(), about);
                assertTrue(near.get().proven(), about);
                now += near.get().lacking() == 0 ? 1 : 0;
                away += near.get().lacking() > 0 ? 1 : 0;
            }
        }
        assertTrue(now > 100 && away > 300 && never > 50, now + " now, " + away + " away, " + never + " never");
    }

    @Test
    void noFillingIsCheaper() {
        int sold = 0;
        int unsold = 0;
        for (int seed = 0; seed < 900; seed++) {
            ReachCase drawn = new ReachCase(seed);
            Market market = drawn.shop.market();
            Set<Map<List<Id>, Integer>> fillings = drawn.fillings(Id.of("Book", "Whole"), Strength.LEAST);
            Optional<Near> near = new Reach(market.catalogue(), drawn.supply).near(drawn.asked(Strength.LEAST),
                    CancelToken.NEVER);
            if (near.isEmpty() || near.get().lacking() == 0 || fillings.size() > 30) {
                continue;
            }
            Cost cost = new Costs(market, Shop.EUR, drawn.supply).cost(drawn.asked(Strength.LEAST), near.get().filling(),
                    CancelToken.NEVER);
            Optional<Money> least = fillings.stream().map(one -> Shop.ask(Question.of(market, drawn.supply,
                    List.of(Target.now(Id.of("List"), "list", ReachCase.needs(one), drawn.allowance))))).map(Answer::plan)
                    .flatMap(Optional::stream).map(Plan::total).min(Comparator.naturalOrder());
            assertEquals(least, cost.total(), "seed " + seed);
            assertTrue(cost.proven(), "seed " + seed);
            sold += least.isPresent() ? 1 : 0;
            unsold += least.isEmpty() ? 1 : 0;
        }
        assertTrue(sold > 30 && unsold > 10, sold + " sold, " + unsold + " unsold");
    }

    @Test
    void aBoxOpensWhatCanBeFieldedWithIt() {
        int opens = 0;
        int shut = 0;
        for (int seed = 0; seed < 250; seed++) {
            ReachCase drawn = new ReachCase(seed);
            Catalogue catalogue = drawn.shop.market().catalogue();
            Reach reach = new Reach(catalogue, drawn.supply);
            Asked asked = drawn.asked(Strength.MOST);
            Optional<Near> near = reach.near(asked, CancelToken.NEVER);
            Set<Map<List<Id>, Integer>> fillings = drawn.fillings(Id.of("Book", "Whole"), Strength.MOST);
            if (near.isEmpty() || near.get().lacking() == 0 || fillings.size() > 60) {
                continue;
            }
            for (Ware ware : drawn.shop.market().wares()) {
                Depot depot = Depot.of(catalogue, drawn.supply.plus(ware.load()), drawn.allowance);
                boolean stands = fillings.stream().anyMatch(one -> depot.turnout(ReachCase.needs(one), CancelToken.NEVER)
                        .complete());
                assertEquals(stands, reach.opens(asked, near.get().lacking(), ware.load(), CancelToken.NEVER),
                        "seed " + seed + ", " + ware.title());
                opens += stands ? 1 : 0;
                shut += stands ? 0 : 1;
            }
        }
        assertTrue(opens > 15 && shut > 50, opens + " open, " + shut + " do not");
    }

    private static FieldUnit unit(String name, Step... steps) {
        return new FieldUnit(Id.of("Book", name), List.of(), List.of(steps));
    }

    private static Step step(int strength, int points, String what) {
        return new Step(strength, points, Shop.needs(strength + " " + what));
    }

    private static final FieldUnit STAFF = unit("Staff", step(1, 10, "Staff"));
    private static final FieldUnit TREADS = unit("Treads", step(3, 24, "Tread"), step(5, 40, "Tread"));
    private static final FieldUnit CRANKS = unit("Cranks", step(4, 20, "Crank"));
    private static final FieldUnit SCOUTS = unit("Scouts", step(2, 8, "Cart"));
    private static final Formation SQUADRON = new Formation(Id.of("Book/Squadron"), List.of(Billet.of(1, 1, List.of(STAFF)),
            Billet.of(2, 3, List.of(TREADS, CRANKS)), Billet.of(0, 1, List.of(SCOUTS))));

    private static Optional<Near> near(String shelf, Strength strength, Formation... formations) {
        Map<Id, Formation> known = new LinkedHashMap<>();
        List.of(formations).forEach(one -> known.put(one.id(), one));
        return new Reach(new Shop().pieces("Staff", "Tread", "Crank", "Cart").market().catalogue(), Shop.shelf(shelf))
                .near(new Asked(known, formations[0].id(), strength, Allowance.EXACT), CancelToken.NEVER);
    }

    @Test
    void theBilletsAreFilledWithWhatIsThere() {
        Near least = near("1 Staff, 3 Tread, 4 Crank", Strength.LEAST, SQUADRON).orElseThrow();
        assertEquals(0, least.lacking());
        assertEquals(List.of(new Fielded(STAFF.unit(), 1, 10, 1), new Fielded(TREADS.unit(), 3, 24, 1),
                new Fielded(CRANKS.unit(), 4, 20, 1)), least.filling().units());
        // At most: three in line and scouts. Treads of 5 lack 2, another troop of cranks 4, scouts 2.
        Near most = near("1 Staff, 3 Tread, 4 Crank", Strength.MOST, SQUADRON).orElseThrow();
        assertEquals(8, most.lacking());
        assertTrue(most.proven());
    }

    /** Two frames are four carts, of which two become a crank each: nothing is bought, but built and worked over. */
    @Test
    void whatIsBuiltIsWorkedOver() {
        Shop shop = new Shop().pieces("Crank", "Cart").part("Frame", "2 Cart", "1 Crank").box("Frames", "2 Frame", "5.00");
        Turns rate = new Turns(Id.of("Book/Card").line(4), Shop.contents("1 Cart"), Shop.contents("1 Crank").get(0),
                OptionalInt.of(2), Validity.ALWAYS);
        Formation both = new Formation(Id.of("Book/Both"), List.of(Billet.of(1, 1, List.of(unit("Two", step(2, 8, "Crank")))),
                Billet.of(1, 1, List.of(unit("Carts", step(2, 8, "Cart"))))));
        Near near = new Reach(shop.market().catalogue(), Loads.supply(shop.market().catalogue(), Map.of(Shop.id("Frames"), 1),
                Shop.DAY)).near(new Asked(Map.of(both.id(), both), both.id(), Strength.LEAST, shop.allowance(rate)),
                        CancelToken.NEVER).orElseThrow();
        assertEquals(0, near.lacking());
        assertTrue(near.proven());
    }

    @Test
    void eachFormationWithinIsFilledInItsOwnWay() {
        Formation pair = new Formation(Id.of("Book/Pair"), List.of(new Billet(List.of(new Room(2, 2, List.of(),
                List.of(Id.of("Book/Troop")))))));
        Formation troop = new Formation(Id.of("Book/Troop"), List.of(new Billet(List.of(
                new Room(1, 1, List.of(CRANKS), List.of()), new Room(2, 2, List.of(SCOUTS), List.of())))));
        // One troop of four cranks, one of two scouts: neither way alone would do for both.
        Near near = near("4 Crank, 4 Cart", Strength.LEAST, pair, troop).orElseThrow();
        assertEquals(0, near.lacking());
        assertEquals(List.of(new Fielded(CRANKS.unit(), 4, 20, 1), new Fielded(SCOUTS.unit(), 2, 8, 2)),
                near.filling().units());
    }

    @Test
    void whatNothingMayStandInIsNeverFielded() {
        Formation ghost = new Formation(Id.of("Book/Ghost"), List.of(Billet.of(1, 1, List.of())));
        assertEquals(Optional.empty(), near("", Strength.LEAST, ghost));
        Formation host = new Formation(Id.of("Book/Host"), List.of(new Billet(List.of(new Room(1, 1, List.of(),
                List.of(ghost.id(), Id.of("Book/Host")))))));
        assertEquals(Optional.empty(), near("", Strength.MOST, host, ghost));
        assertThrows(IllegalArgumentException.class, () -> Billet.of(2, 1, List.of()));
    }
}
