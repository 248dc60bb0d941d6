package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Weeks.BEGIN;
import static org.cantonment.stock.tests.Weeks.moved;
import static org.cantonment.stock.tests.Weeks.passed;
import static org.cantonment.stock.tests.Weeks.player;
import static org.cantonment.stock.tests.Weeks.week;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.CountTaken;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.MoveVerb;
import org.cantonment.domain.campaign.PassVerb;
import org.cantonment.domain.campaign.Struck;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.ledger.Ledger;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** What lies where after any day. The loan of a week is solved by hand; the rest is held against what must always be so. */
class LedgerTest {

    private static final LocalDate WEEK_5 = BEGIN.plusWeeks(4);
    private static final LocalDate MONDAY = WEEK_5;
    private static final LocalDate TUESDAY = WEEK_5.plusDays(1);
    private static final LocalDate WEDNESDAY = WEEK_5.plusDays(2);
    private static final LocalDate THURSDAY = WEEK_5.plusDays(3);
    private static final LocalDate FRIDAY = WEEK_5.plusDays(4);

    private static Shelf shelf(Things things, String... owners) {
        Shelf one = things.shelf();
        return new Shelf(Id.of("Shelf-" + String.join("-", owners)), owners.length == 0,
                List.of(owners).stream().map(Weeks::player).toList(), Optional.empty(), Optional.empty(), one.holdings(),
                List.of(), List.of(), List.of());
    }

    private static Things wagons(int count) {
        return new Things().piece("Tread-Wagon", null).has(count + " Tread-Wagon");
    }

    private static Ledger loan(Week week) {
        return Ledger.of(wagons(0).catalogue(), List.of(shelf(wagons(4), "Ombra"), shelf(wagons(1), "Brack")),
                Weeks.campaign(List.of(), List.of()), List.of(week));
    }

    private static int count(Supply supply, String what) {
        return supply.stacks().stream().filter(stack -> stack.what().equals(id(what))).mapToInt(Stack::counted).sum();
    }

    private static String wagons(Inventory inventory) {
        return count(inventory.of(player("Ombra")), "Tread-Wagon") + "/" + count(inventory.of(player("Brack")), "Tread-Wagon");
    }

    @Test
    void aLoanGoesThereAndBackAndALossMovesNothing() {
        List<Deed> deeds = new ArrayList<>(List.of(passed("Ombra", PassVerb.LENT, "Brack", MONDAY, "2 Tread-Wagon"),
                moved("Brack", MoveVerb.LOST, TUESDAY, "2 Tread-Wagon"),
                passed("Brack", PassVerb.RETURNED, "Ombra", WEDNESDAY, "2 Tread-Wagon")));
        for (int turn = 0; turn < 3; turn++) {
            Collections.rotate(deeds, 1);
            Ledger ledger = loan(week(5, deeds.toArray(Deed[]::new)));
            assertEquals("4/1", wagons(ledger.at(AsOf.day(MONDAY.minusDays(1)))));
            assertEquals("2/3", wagons(ledger.at(AsOf.day(MONDAY))));
            assertEquals("2/3", wagons(ledger.at(AsOf.day(TUESDAY))));
            assertEquals("4/1", wagons(ledger.at(AsOf.day(WEDNESDAY))));
            assertEquals("4/1", wagons(ledger.at(AsOf.day(THURSDAY))));
            assertEquals(List.of(), ledger.at(AsOf.NOW).loans());
            assertEquals(List.of(), ledger.at(AsOf.NOW).findings());
        }
    }

    @Test
    void whatComesBackTooLateIsOnLoanUntilThen() {
        Ledger ledger = loan(week(5, passed("Ombra", PassVerb.LENT, "Brack", MONDAY, "2 Tread-Wagon"),
                passed("Brack", PassVerb.RETURNED, "Ombra", FRIDAY, "2 Tread-Wagon")));
        Inventory thursday = ledger.at(AsOf.day(THURSDAY));
        assertEquals("2/3", wagons(thursday));
        assertEquals(2, thursday.lentBy(player("Ombra")).get(0).count());
        assertEquals("4/1", wagons(ledger.at(AsOf.day(FRIDAY))));
    }

    @Test
    void aShelfNeverGoesBelowZero() {
        Inventory now = loan(week(5, passed("Ombra", PassVerb.LENT, "Brack", MONDAY, "6 Tread-Wagon"))).at(AsOf.NOW);
        assertEquals("0/5", wagons(now));
        assertEquals(List.of("shelf.below-zero"), now.findings().stream().map(one -> one.code()).toList());
        assertTrue(now.findings().get(0).message().contains("only 4 are"), now.findings().get(0).message());
        assertTrue(now.findings().get(0).mends().get(0).label().contains("found 2 Tread-Wagon"));
    }

    @Test
    void whatWasKnownThenIsKeptApartFromWhatIsKnownNow() {
        Deed wrong = passed("Ombra", PassVerb.GAVE, "Brack", MONDAY, "2 Tread-Wagon");
        Correction correction = new Correction(Id.of("Week7").line(1), 5, "Counted twice", List.of(
                new Struck(Id.of("Week7").line(2), true, passed("Ombra", PassVerb.GAVE, "Brack", null, "2 Tread-Wagon")),
                new Struck(Id.of("Week7").line(3), false, passed("Ombra", PassVerb.GAVE, "Brack", MONDAY, "Tread-Wagon"))));
        Ledger ledger = Ledger.of(wagons(0).catalogue(), List.of(shelf(wagons(4), "Ombra"), shelf(wagons(1), "Brack")),
                Weeks.campaign(List.of(), List.of()), List.of(week(7, List.of(correction)), week(5, wrong)));
        assertEquals("2/3", wagons(ledger.at(AsOf.week(5))));
        assertEquals("2/3", wagons(ledger.at(AsOf.week(6))));
        assertEquals("3/2", wagons(ledger.at(AsOf.week(7))));
        assertEquals("3/2", wagons(ledger.at(AsOf.day(MONDAY))));
        Week twice = week(8, List.of(correction));
        assertEquals(List.of("week.nothing-struck"), Ledger.of(wagons(0).catalogue(), List.of(), Optional.empty(),
                List.of(twice)).at(AsOf.NOW).findings().stream().map(one -> one.code()).toList());
    }

    @Test
    void whoseShelfNobodyWroteDownCannotGoBelowZero() {
        Inventory now = Ledger.of(wagons(0).catalogue(), List.of(shelf(wagons(1), "Brack")),
                Weeks.campaign(List.of(), List.of()), List.of(week(5,
                        passed("Quill", PassVerb.LENT, "Brack", MONDAY, "2 Tread-Wagon")))).at(AsOf.NOW);
        assertEquals(List.of(), now.findings());
        assertEquals(3, count(now.of(player("Brack")), "Tread-Wagon"));
    }

    @Test
    void boxesPartsAndCountsFindTheirPlace() {
        Things range = new Things().piece("Spotter", null).piece("Carrier", null)
                .part("Frame", "2 Spotter", "3 Carrier").part("Loose", Fixing.LOOSE_BETWEEN_GAMES, "Spotter", "Carrier")
                .box("O-12", "2 Frame", "Carrier");
        Deed bought = moved("Ombra", MoveVerb.BOUGHT, MONDAY, "O-12");
        Deed built = moved("Ombra", MoveVerb.BUILT, TUESDAY, "3 Carrier");
        Deed lent = passed("Ombra", PassVerb.LENT, "Brack", WEDNESDAY, "4 Carrier");
        Deed counted = Weeks.deed("Brack", new CountTaken(Weeks.held("3 Carrier")), THURSDAY);
        Ledger ledger = Ledger.of(range.catalogue(), List.of(), Weeks.campaign(List.of(), List.of()),
                List.of(week(5, counted, lent, built, bought)));
        Supply monday = ledger.at(AsOf.day(MONDAY)).of(player("Ombra"));
        assertEquals(1, count(monday, "Carrier"));
        assertEquals(2, monday.frames().get(0).count());
        Supply tuesday = ledger.at(AsOf.day(TUESDAY)).of(player("Ombra"));
        assertEquals(4, count(tuesday, "Carrier"));
        assertEquals(1, tuesday.frames().get(0).count());
        Inventory friday = ledger.at(AsOf.day(FRIDAY));
        assertEquals(0, count(friday.of(player("Ombra")), "Carrier"));
        assertEquals(3, count(friday.of(player("Brack")), "Carrier"));
        assertEquals(List.of(), friday.findings());
    }

    @Test
    void whatWasWrittenOnTheShelfAlreadyIsNotBookedAgain() {
        Shelf one = shelf(wagons(4), "Ombra");
        Shelf written = new Shelf(one.id(), false, one.owners(), Optional.empty(), Optional.of(TUESDAY), one.holdings(),
                List.of(), List.of(), List.of());
        Ledger ledger = Ledger.of(wagons(0).catalogue(), List.of(written), Weeks.campaign(List.of(), List.of()),
                List.of(week(5, moved("Ombra", MoveVerb.FOUND, MONDAY, "Tread-Wagon"),
                        moved("Ombra", MoveVerb.FOUND, WEDNESDAY, "2 Tread-Wagon"))));
        assertEquals(6, count(ledger.at(AsOf.NOW).of(player("Ombra")), "Tread-Wagon"));
    }

    /** Whatever is passed round, nothing appears and nothing vanishes, and the order of the lines has no meaning. */
    @Test
    void nothingAppearsOrVanishes() {
        String[] names = {"Ombra", "Brack", "Quill"};
        Random random = new Random(51);
        for (int run = 0; run < 200; run++) {
            List<Shelf> shelves = new ArrayList<>();
            int all = 0;
            for (String name : names) {
                int count = 1 + random.nextInt(5);
                all += count;
                shelves.add(shelf(wagons(count), name));
            }
            List<Deed> deeds = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                int from = random.nextInt(3);
                deeds.add(passed(names[from], PassVerb.values()[random.nextInt(4)], names[(from + 1 + random.nextInt(2)) % 3],
                        MONDAY.plusDays(random.nextInt(3)), 1 + random.nextInt(3) + " Tread-Wagon"));
            }
            Inventory now = Ledger.of(wagons(0).catalogue(), shelves, Weeks.campaign(List.of(), List.of()),
                    List.of(week(5, deeds.toArray(Deed[]::new)))).at(AsOf.NOW);
            Collections.shuffle(deeds, random);
            Inventory shuffled = Ledger.of(wagons(0).catalogue(), shelves, Weeks.campaign(List.of(), List.of()),
                    List.of(week(5, deeds.toArray(Deed[]::new)))).at(AsOf.NOW);
            int sum = 0;
            for (String name : names) {
                sum += count(now.of(player(name)), "Tread-Wagon");
            }
            assertEquals(all, sum);
            assertEquals(now.piles(), shuffled.piles());
            assertEquals(now.findings(), shuffled.findings());
            assertTrue(now.loans().stream().allMatch(loan -> loan.until().equals(OptionalInt.empty())));
        }
    }
}
