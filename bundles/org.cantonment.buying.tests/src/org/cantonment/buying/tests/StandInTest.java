package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.needs;
import static org.cantonment.buying.tests.Shop.shelf;
import static org.cantonment.buying.tests.Shop.text;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** Purchases where pieces may stand for others. */
class StandInTest {

    private static final Id CARD = Id.of("Book/Card");

    private static Fact kindred() {
        return new Allows(CARD.line(1), Level.KINDRED, Validity.ALWAYS);
    }

    private static Fact lets(String what, String standFor, OptionalInt percent) {
        return new Stands(CARD.line(2), List.of(id(what)), List.of(id(standFor)), percent, false, Validity.ALWAYS);
    }

    private static Plan plan(Shop shop, Supply shelf, String needs, Fact... facts) {
        Target target = Target.now(Id.of("List"), "List", needs(needs), shop.allowance(facts));
        return Shop.ask(Question.of(shop.market(), shelf, List.of(target))).plan().orElseThrow();
    }

    /**
     * Each pair of the first three needs can be served, all three cannot: a shortage of 2. Scout carts alone mend it, for
     * 9.00; two long wagons would be 10.00.
     */
    @Test
    void theCheapestMendOfAShortage() {
        Shop shop = new Shop().family("Gun-Wagons", "Gun-Wagon", "Long-Wagon").pieces("Scout-Cart", "Marsh-Foot")
                .box("Carts", "3 Scout-Cart", "9.00").box("Guns", "2 Gun-Wagon", "11.50").box("Long", "1 Long-Wagon", "5.00");
        Supply shelf = shelf("4 Gun-Wagon, 2 Long-Wagon, 1 Scout-Cart, 14 Marsh-Foot");
        String needs = "4 Gun-Wagon, 2 Gun-Wagon, 3 Scout-Cart, 10 Marsh-Foot";
        Plan close = plan(shop, shelf, needs, kindred(), lets("Gun-Wagon", "Scout-Cart", OptionalInt.empty()));
        assertEquals("1 Carts", text(close));
        assertEquals(eur("9.00"), close.total());
        Plan exact = plan(shop, shelf, needs);
        assertEquals("1 Carts, 1 Guns", text(exact));
        assertEquals(eur("20.50"), exact.total());
    }

    @Test
    void aShareBoundsTheStandIns() {
        Shop shop = new Shop().pieces("Car", "Wagon").box("Cars", "1 Car", "6.00");
        assertEquals("7 Cars", text(plan(shop, shelf("9 Wagon"), "10 Car", lets("Wagon", "Car", OptionalInt.of(30)))));
    }

    /** Five crank cars and a list of three crank cars and two tread wagons: with one meaning two pike cars are wanted. */
    @Test
    void oneTableOneMeaning() {
        Shop shop = new Shop().family("Cars", "Crank", "Pike", "Tread").box("Pikes", "1 Pike", "7.00")
                .box("Treads", "1 Tread", "8.00");
        assertEquals(eur("0.00"), plan(shop, shelf("5 Crank"), "3 Crank, 2 Tread", kindred()).total());
        Plan one = plan(shop, shelf("5 Crank"), "3 Crank, 2 Tread", kindred(), new OneTable(CARD.line(3), Validity.ALWAYS));
        assertEquals("2 Pikes", text(one));
    }

    /**
     * Common practice, no source: an infantry bundle of two full platoons is nearly a minimum company; it lacks only the
     * command teams, which spare figures are converted into.
     */
    @Test
    void spareFiguresBecomeCommandTeams() {
        Shop shop = new Shop().pieces("Rifle", "Command").bundle("Two-Platoons", "48 Rifle", "40.00")
                .box("Staff", "2 Command", "12.00");
        String company = "40 Rifle, 2 Command";
        assertEquals(eur("52.00"), plan(shop, Supply.NONE, company).total());
        Fact turns = new Turns(CARD.line(4), Shop.contents("2 Rifle"), Shop.contents("1 Command").get(0), OptionalInt.empty(),
                Validity.ALWAYS);
        Plan plan = plan(shop, Supply.NONE, company, turns);
        assertEquals("1 Two-Platoons", text(plan));
        assertEquals(2, plan.conversions().get(0).times());
        assertEquals(2, plan.turnouts().get(0).standing(Truth.CONVERSION));
        assertEquals("4 Rifle", Shop.left(plan));
    }

    private static Fact turns(String from, String to) {
        return new Turns(CARD.line(4), Shop.contents(from), Shop.contents(to).get(0), OptionalInt.empty(), Validity.ALWAYS);
    }

    /**
     * Four wheels and a spotter make an officer. A frame built as two spotters leaves two wheels, so two frames are needed for
     * an officer, and three spotters are over for the rest; frames built as carriers leave none.
     */
    @Test
    void whatABuildLeavesIsWorkedOver() {
        Shop shop = new Shop().pieces("Spotter", "Carrier", "Officer").bits("Wheels")
                .part("Frame", "2 Spotter leaves 2 Wheels", "3 Carrier").box("Frames", "1 Frame", "5.00")
                .box("Staff", "1 Officer", "12.00");
        Fact rate = turns("1 Spotter, 4 Wheels", "1 Officer");
        Plan plan = plan(shop, Supply.NONE, "1 Officer, 3 Spotter", rate);
        assertEquals("2 Frames", text(plan));
        assertEquals(1, plan.conversions().get(0).times());
        assertEquals("", Shop.left(plan));
        assertEquals("3 Frames", text(plan(shop, Supply.NONE, "1 Officer, 3 Spotter, 1 Carrier", rate)));
        assertEquals("1 Frames", text(plan(shop, shelf("4 Wheels"), "1 Officer, 1 Spotter", rate)));
    }

    /** What comes loose between games is not worked over, though there is only one way to build it. */
    @Test
    void whatComesLooseBetweenGamesIsNotWorkedOver() {
        Shop shop = new Shop().pieces("Spotter", "Officer").part("Turret", Fixing.LOOSE_BETWEEN_GAMES, "2 Spotter")
                .box("Turrets", "1 Turret", "5.00").box("Staff", "1 Officer", "12.00");
        assertEquals("1 Staff", text(plan(shop, Supply.NONE, "1 Officer", turns("2 Spotter", "1 Officer"))));
    }

    /** A captain that was worked over is a captain: then no captain stands for a horn at that table. */
    @Test
    void whatWasWorkedOverStandsForItself() {
        Shop shop = new Shop().family("Leaders", "Captain", "Horn").pieces("Foot").box("Horns", "1 Horn", "3.00");
        Fact[] facts = {kindred(), turns("1 Foot", "1 Captain"), new OneTable(CARD.line(3), Validity.ALWAYS)};
        Supply shelf = shelf("1 Captain, 1 Foot");
        assertEquals("1 Horns", text(plan(shop, shelf, "1 Captain, 1 Horn", facts)));
        assertEquals("", text(plan(shop, shelf, "1 Captain, 1 Horn", kindred(), turns("1 Foot", "1 Captain"))));
    }

    /**
     * Common practice, no source: five of one vehicle make a headquarters of two and a platoon of three, and eight more bulk
     * out that platoon and make a second.
     */
    @Test
    void fiveVehiclesThenEightMore() {
        Shop shop = new Shop().pieces("Tank").box("Five", "5 Tank", "30.00").box("Eight", "8 Tank", "45.00");
        assertEquals("1 Five", text(plan(shop, Supply.NONE, "2 Tank, 3 Tank")));
        Plan more = plan(shop, shelf("5 Tank"), "2 Tank, 5 Tank, 5 Tank");
        assertEquals("1 Eight", text(more));
    }

    /** Common practice, no source: the same box built another way fields another unit. */
    @Test
    void theSameBoxFieldsAnotherUnit() {
        Shop shop = new Shop().pieces("Gun", "Carrier").part("Hull", "1 Gun", "1 Carrier").box("Three", "3 Hull", "20.00");
        for (String needs : List.of("3 Gun", "3 Carrier", "1 Gun, 2 Carrier")) {
            assertEquals("1 Three", text(plan(shop, Supply.NONE, needs)));
        }
    }

    /** What may stand for what goes round in a circle: each only one step. */
    @Test
    void circularStandIns() {
        Shop shop = new Shop().pieces("A", "B", "C").box("As", "1 A", "1.00").box("Bs", "1 B", "5.00").box("Cs", "1 C", "9.00");
        Fact[] circle = {lets("A", "B", OptionalInt.empty()), lets("B", "C", OptionalInt.empty()),
                lets("C", "A", OptionalInt.empty())};
        assertEquals("2 As, 1 Bs", text(plan(shop, Supply.NONE, "1 A, 1 B, 1 C", circle)));
    }

    /**
     * Three of a family are needed, each by name, kindred allowed, and one table has one meaning. A surplus of one of them may
     * fill another's place only if it stands for itself nowhere: then its own place must be filled by a fourth.
     */
    @Test
    void aSurplusStandsForOthersOnlyIfItStandsForItselfNowhere() {
        Shop shop = new Shop().family("Leaders", "Captain", "Horn", "Standard", "Warden").box("Horns", "1 Horn", "3.00")
                .box("Standards", "1 Standard", "4.00").box("Wardens", "1 Warden", "2.50");
        Fact[] facts = {kindred(), new OneTable(CARD.line(3), Validity.ALWAYS)};
        String needs = "1 Captain, 3 Horn, 3 Standard";
        assertEquals("1 Wardens", text(plan(shop, shelf("7 Captain"), needs, facts)));
        assertEquals("6 Wardens", text(plan(shop, shelf("3 Captain, 1 Standard"), "3 Captain, 3 Horn, 4 Standard", facts)));
        assertEquals(eur("0.00"), plan(shop, shelf("7 Captain"), needs, kindred()).total());
    }

    /** What one list asks for and another one as well is there once, also where each type has one meaning. */
    @Test
    void aThousandListsOfOneMeaning() {
        Shop shop = new Shop().family("Cars", "Crank", "Pike", "Tread").box("Cranks", "4 Crank", "20.00")
                .box("Pikes", "4 Pike", "24.00").box("Treads", "3 Tread", "21.00");
        Fact[] facts = {kindred(), new OneTable(CARD.line(3), Validity.ALWAYS)};
        List<Target> lists = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            lists.add(Target.now(Id.of("L" + i), "L" + i, needs((1 + i % 30) + " Crank, " + (1 + i % 7) + " Pike"),
                    shop.allowance(facts)));
        }
        Plan all = Shop.ask(Question.of(shop.market(), Supply.NONE, lists)).plan().orElseThrow();
        Plan greatest = plan(shop, Supply.NONE, "30 Crank, 7 Pike", facts);
        assertEquals(greatest.total(), all.total());
        assertEquals(text(greatest), text(all));
    }
}
