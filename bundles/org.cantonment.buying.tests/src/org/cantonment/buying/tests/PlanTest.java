package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.left;
import static org.cantonment.buying.tests.Shop.offer;
import static org.cantonment.buying.tests.Shop.target;
import static org.cantonment.buying.tests.Shop.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.plan.Alternatives;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Building;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Priorities;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class PlanTest {

    private static Shop marsh() {
        return new Shop().pieces("Foot", "Car", "Staff").extra("Book").box("Platoon", "12 Foot", "18.00")
                .box("Company", "24 Foot", "32.00").box("Cars", "3 Car", "22.00").box("Heads", "5 Staff", "9.00")
                .box("Rules", "1 Book", "8.00");
    }

    @Test
    void buysTheCheapestBoxesForWhatIsMissing() {
        Plan plan = marsh().plan(Shop.shelf("2 Foot"), target("Tessel", "12 Foot, 3 Car"));
        assertEquals("1 Cars, 1 Platoon", text(plan));
        assertEquals(eur("40.00"), plan.total());
        assertEquals("2 Foot", left(plan));
        assertTrue(plan.proven() && plan.settled());
        assertEquals(eur("0.00"), plan.gap());
        assertEquals(15, plan.turnouts().get(0).filled());
    }

    @Test
    void ofEqualCostTheFewestPiecesThenTheFewestBoxesThenTheFirstCode() {
        Shop shop = new Shop().pieces("Foot", "Car").box("A-Four", "4 Foot", "4.00").box("B-Three", "3 Foot", "4.00")
                .box("C-Three", "3 Foot", "4.00").box("D-Car", "1 Car", "2.00").box("E-Cars", "2 Car", "4.00");
        assertEquals("1 B-Three", text(shop.plan(Supply.NONE, target("Three", "3 Foot"))));
        assertEquals("1 E-Cars", text(shop.plan(Supply.NONE, target("Cars", "2 Car"))));
        assertEquals("1 A-Four", text(shop.plan(Supply.NONE, target("Four", "4 Foot"))));
    }

    /** Goods of 46.00 become 50.50 with a box that nobody needs, and are sent free. */
    @Test
    void anUnneededBoxMayBeCheaperThanPostage() {
        Shop shop = new Shop().pieces("Gun", "Dog").box("Guns", "1 Gun", "").box("Dogs", "1 Dog", "").seller("Quay",
                "6.00", "50.00", "", 3, offer("G", -1, "Guns", eur("23.00")), offer("D", -1, "Dogs", eur("4.50")));
        Plan plan = shop.plan(Supply.NONE, target("Two", "2 Gun"));
        assertEquals("1 Dogs, 2 Guns", text(plan));
        assertEquals(eur("50.50"), plan.total());
        assertEquals("1 Dog", left(plan));
        assertEquals(eur("0.00"), plan.orders().get(0).sending());
        Plan one = shop.plan(Supply.NONE, target("One", "1 Gun"));
        assertEquals(eur("29.00"), one.total());
        assertEquals(eur("6.00"), one.orders().get(0).sending());
    }

    @Test
    void aDiscountIsRoundedDownAndMayBeWorthReaching() {
        Shop shop = new Shop().pieces("Gun", "Car").box("Guns", "1 Gun", "").box("Cars", "1 Car", "12.00").seller("Quay", "",
                "", "10 from 40.00, 5", 3, offer("G", -1, "Guns", eur("14.99")), offer("C", -1, "Cars", eur("11.99")));
        Plan two = shop.plan(Supply.NONE, target("Two", "2 Gun"));
        assertEquals(eur("1.49"), two.orders().get(0).off());
        assertEquals(eur("28.49"), two.total());
        Plan three = shop.plan(Supply.NONE, target("Three", "2 Gun, 1 Car"));
        assertEquals(eur("4.19"), three.orders().get(0).off());
        assertEquals(eur("37.78"), three.total());
    }

    @Test
    void buildsAreChosenOnceForAllLists() {
        Shop shop = new Shop().pieces("Crank", "Gun").part("Frame", "1 Crank", "1 Gun").box("Cars", "2 Frame", "12.00");
        Plan plan = shop.plan(Supply.NONE, target("One", "2 Crank"), target("Other", "1 Gun, 1 Crank"));
        assertEquals(eur("24.00"), plan.total());
        assertEquals(3, plan.buildings().stream().mapToInt(one -> one.count()).sum());
        assertEquals("1 Frame", left(plan));
    }

    @Test
    void partsThatComeLooseAreBuiltForEachList() {
        Shop shop = new Shop().pieces("Crank", "Gun").part("Frame", Fixing.LOOSE_BETWEEN_GAMES,
                "1 Crank", "1 Gun").box("Cars", "2 Frame", "12.00");
        Plan plan = shop.plan(Supply.NONE, target("One", "2 Crank"), target("Other", "1 Gun, 1 Crank"));
        assertEquals(eur("12.00"), plan.total());
    }

    /** Two frames, each 2 spotters or 3 carriers, cannot give 3 spotters and 1 carrier, though each set of needs counts. */
    @Test
    void handfulsAreWhole() {
        Shop shop = new Shop().pieces("Spotter", "Carrier").part("Frame", "2 Spotter", "3 Carrier")
                .box("Cars", "1 Frame", "5.00");
        assertEquals(eur("15.00"), shop.plan(Supply.NONE, target("Mixed", "3 Spotter, 1 Carrier")).total());
    }

    @Test
    void aCapOverTheBoxAsksForMoreBoxes() {
        Shop shop = new Shop().pieces("Leader", "Foot").part("Man", "1 Leader", "1 Foot").box("Five", "5 Man", "10.00", -1,
                List.of(Shop.cap(1, "Leader")), false);
        assertEquals(eur("10.00"), shop.plan(Supply.NONE, target("One", "1 Leader, 4 Foot")).total());
        assertEquals(eur("20.00"), shop.plan(Supply.NONE, target("Two", "2 Leader, 1 Foot")).total());
    }

    @Test
    void aCapThatCountsHandfulsOfSeveralSizesHoldsForEachBox() {
        Shop shop = new Shop().pieces("Leader", "Foot").part("Pair", "2 Leader", "2 Foot").part("Trio", "3 Leader", "3 Foot")
                .box("Five", "1 Pair, 1 Trio", "10.00", -1, List.of(Shop.cap(4, "Leader")), false);
        assertEquals(eur("20.00"), shop.plan(Supply.NONE, target("Six", "6 Leader")).total());
        assertEquals(eur("30.00"), shop.plan(Supply.NONE, target("Seven", "7 Leader")).total());
    }

    @Test
    void pricesInOtherCurrenciesGoByTheRateOfTheDay() {
        Shop shop = new Shop().pieces("Gun").box("Guns", "1 Gun", "9.00").seller("Fjord", "", "", "", 3,
                offer("S", -1, "Guns", Money.parse("SEK 100.00"))).rate("EUR 1.00", "SEK 11.42");
        Plan plan = shop.plan(Supply.NONE, target("Two", "2 Gun"));
        assertEquals(eur("17.52"), plan.total());
        assertEquals("2 Guns", text(plan));
    }

    @Test
    void aLotIsBoughtWholeAndOnce() {
        Shop shop = new Shop().pieces("Foot").box("Platoon", "12 Foot", "18.00").lot("Attic", "Tin", "14 Foot", "12.00");
        assertEquals("1 Tin", text(shop.plan(Supply.NONE, target("A", "14 Foot"))));
        assertEquals("1 Platoon, 1 Tin", text(shop.plan(Supply.NONE, target("A", "24 Foot"))));
        assertEquals("2 Platoon, 1 Tin", text(shop.plan(Supply.NONE, target("A", "38 Foot"))));
    }

    @Test
    void nothingMissingCostsNothing() {
        Plan plan = marsh().plan(Shop.shelf("12 Foot"), target("A", "12 Foot"));
        assertEquals(eur("0.00"), plan.total());
        assertEquals("", text(plan));
    }

    private static void lacks(Shop shop, String code, Question question) {
        Answer answer = Shop.ask(question);
        assertTrue(answer.impossible());
        assertFalse(answer.plan().isPresent());
        assertEquals(List.of(code), answer.findings().stream().map(Finding::code).toList());
    }

    @Test
    void saysWhyThereIsNoPlan() {
        Shop shop = marsh().pieces("Barge").box("Barges", "1 Barge", "").box("Old", "2 Staff", "3.00", 2, List.of(), false);
        List<Target> barge = List.of(target("A", "1 Barge"));
        lacks(shop, "buying.no-price", Question.of(shop.market(), Supply.NONE, barge));
        lacks(shop, "buying.nobody-sells", Question.of(marsh().market(), Supply.NONE, barge));
        lacks(shop, "buying.too-few", Question.of(shop.market().without(List.of(Shop.id("Heads"))), Supply.NONE,
                List.of(target("A", "5 Staff"))));
        lacks(shop, "buying.budget", Question.of(shop.market(), Supply.NONE, List.of(target("A", "12 Foot")))
                .with(List.of(Stage.OPEN.with(eur("0.00"))), false));
        lacks(shop, "buying.no-price", Question.of(shop.market(), Supply.NONE, List.of(target("A", "1 Foot")))
                .buying(Map.of(Shop.id("Barges"), 1)));
    }

    /** A budget of nothing buys what costs nothing, and else says what it would cost. */
    @Test
    void aBudgetOfNothing() {
        Shop shop = marsh().box("Gift", "1 Staff", "0.00");
        Question gift = Question.of(shop.market(), Supply.NONE, List.of(target("A", "2 Staff")))
                .with(List.of(Stage.OPEN.with(eur("0.00"))), false);
        assertEquals("2 Gift", text(Shop.ask(gift).plan().orElseThrow()));
        Answer answer = Shop.ask(gift.with(List.of(target("A", "2 Staff, 12 Foot"))));
        assertEquals("It costs 18.00 EUR at the least; the budget is 0.00 EUR.", answer.findings().get(0).message());
        Priorities none = Priorities.of(Question.of(shop.market(), Supply.NONE, List.of(target("A", "12 Foot"),
                target("B", "3 Staff"))), eur("0.00"), Shop.EUR, CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of("B"), none.kept().stream().map(Target::title).toList());
        assertEquals(eur("18.00"), none.left().get(0).together().orElseThrow());
    }

    /** Of boxes that cost nothing the fewest pieces are taken, and none for a threshold that they do not reach. */
    @Test
    void freeBoxesReachNoThreshold() {
        Shop shop = new Shop().pieces("Gun", "Dog").box("Guns", "1 Gun", "").box("Dogs", "1 Dog", "").seller("Quay",
                "6.00", "50.00", "10 from 40.00", 3, offer("G", -1, "Guns", eur("23.00")), offer("D", -1, "Dogs", eur("0.00")));
        Plan plan = shop.plan(Supply.NONE, target("Two", "2 Gun"));
        assertEquals("2 Guns", text(plan));
        assertEquals(eur("47.40"), plan.total());
    }

    /** A filler is bought as long as it costs less than what is gained, several of it if need be. */
    @Test
    void severalFillersMayReachAThreshold() {
        Shop shop = new Shop().pieces("Gun", "Dog").box("Guns", "1 Gun", "").box("Dogs", "1 Dog", "").seller("Quay",
                "6.00", "50.00", "", 3, offer("G", -1, "Guns", eur("23.00")), offer("D", -1, "Dogs", eur("1.40")));
        Plan three = shop.plan(Supply.NONE, target("Two", "2 Gun"));
        assertEquals("3 Dogs, 2 Guns", text(three));
        assertEquals(eur("50.20"), three.total());
        Plan none = shop.plan(Supply.NONE, target("One", "1 Gun"));
        assertEquals("1 Guns", text(none));
    }

    @Test
    void pricesOfNothingCostNothing() {
        Shop shop = new Shop().pieces("Foot").box("Gift", "5 Foot", "0.00");
        Plan plan = shop.plan(Supply.NONE, target("A", "12 Foot"));
        assertEquals("3 Gift", text(plan));
        assertEquals(eur("0.00"), plan.total());
    }

    @Test
    void listsByPriorityUnderABudget() {
        Shop shop = marsh();
        Question question = Question.of(shop.market(), Supply.NONE,
                List.of(target("First", "12 Foot"), target("Dear", "24 Foot, 3 Car"), target("Last", "5 Staff, 10 Foot")));
        Priorities kept = Priorities.of(question, eur("30.00"), Shop.EUR, CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of("First", "Last"), kept.kept().stream().map(Target::title).toList());
        assertEquals(eur("27.00"), kept.answer().plan().orElseThrow().total());
        assertEquals(eur("54.00"), kept.left().get(0).together().orElseThrow());
    }

    @Test
    void nextBestPlansHaveOtherBoxes() {
        Shop shop = new Shop().pieces("Foot").box("A", "6 Foot", "6.00").box("B", "9 Foot", "8.00").box("C", "20 Foot",
                "15.00");
        List<Plan> plans = Alternatives.of(Question.of(shop.market(), Supply.NONE, List.of(target("L", "18 Foot"))),
                eur("3.00"), 10, Shop.EUR, CancelToken.NEVER);
        assertEquals(List.of("1 C", "2 B", "3 A"), plans.stream().map(Shop::text).toList());
        assertEquals(List.of(eur("15.00"), eur("16.00"), eur("18.00")), plans.stream().map(Plan::total).toList());
    }

    @Test
    void aThousandListsAreOneQuestion() {
        Shop shop = marsh();
        Target[] lists = new Target[1000];
        for (int i = 0; i < lists.length; i++) {
            lists[i] = target("L" + i, (1 + i % 50) + " Foot, " + (1 + i % 7) + " Car, " + (1 + i % 3) + " Staff");
        }
        assertEquals(eur("157.00"), shop.plan(Supply.NONE, lists).total());
    }

    @Test
    void cancelledAtOnceItSaysWhatItKnows() {
        Question question = Question.of(marsh().market(), Supply.NONE, List.of(target("A", "40 Foot, 7 Car, 6 Staff")));
        Answer answer = Planner.plan(question, Shop.EUR, () -> true, Progress.SILENT);
        assertFalse(answer.impossible());
        Money least = Shop.ask(question).plan().orElseThrow().total();
        assertFalse(answer.bound().orElseThrow().isGreaterThan(least));
        answer.plan().ifPresent(plan -> assertFalse(plan.total().isLessThan(least)));
    }

    /** Alone 18.00 and 6.00 each; together one box does for both, sent once. */
    @Test
    void severalPeopleShareBoxesAndPostage() {
        Shop shop = new Shop().pieces("Foot", "Crank", "Gun").part("Frame", "1 Crank", "1 Gun").box("Big", "12 Foot, 2 Frame",
                "").seller("Quay", "6.00", "", "", 3, offer("B", -1, "Big", eur("18.00")));
        Target ombra = target("Ombra", "5 Foot, 1 Crank");
        Target brack = target("Brack", "7 Foot, 1 Gun").of(1);
        assertEquals(eur("24.00"), shop.plan(Supply.NONE, target("Ombra", "5 Foot, 1 Crank")).total());
        Plan both = Shop.ask(Question.together(shop.market(), List.of(Supply.NONE, Supply.NONE), List.of(ombra, brack)))
                .plan().orElseThrow();
        assertEquals(eur("24.00"), both.total());
        assertEquals("", left(both));
        assertEquals(List.of("5 Foot to 0", "7 Foot to 1", "1 Crank to 0", "1 Gun to 1"), both.buildings().stream()
                .sorted(Comparator.comparing((Building one) -> one.part()).thenComparing(Building::person))
                .map(one -> one.count() + " " + one.gives().keySet().iterator().next().name() + " to " + one.person()).toList());
        Plan more = Shop.ask(Question.together(shop.market(), List.of(Shop.shelf("20 Foot"), Supply.NONE),
                List.of(target("Ombra", "5 Foot"), target("Brack", "13 Foot").of(1)))).plan().orElseThrow();
        assertEquals("2 Big", text(more));
    }

    @Test
    void aPlanThatRestsOnGuessesSaysSo() {
        Supply shelf = new Supply(List.of(new Stack(Shop.id("Foot"), 2, 5, 9)), List.of(), List.of(), List.of());
        Plan plan = marsh().plan(shelf, target("A", "18 Foot"));
        assertEquals("1 Platoon", text(plan));
        assertEquals(4, plan.turnouts().get(0).guesses().get(0).pieces());
    }

    /** Two frames that are only guessed to be there, and a lot with six foot that its seller guesses. */
    @Test
    void guessesInPartsAndInLotsAreSaid() {
        Shop shop = new Shop().pieces("Foot", "Crank", "Gun").part("Frame", "1 Crank", "1 Gun").box("Cars", "2 Frame", "12.00");
        Supply shelf = new Supply(List.of(), List.of(new Frames(Shop.id("Frame"), 2, true,
                List.of(new Way(Shop.id("Frame").line(1), Map.of(Shop.id("Crank"), 1)),
                        new Way(Shop.id("Frame").line(2), Map.of(Shop.id("Gun"), 1))), -1, Fixing.GLUED)), List.of(), List.of());
        Plan plan = shop.plan(shelf, target("A", "1 Crank, 2 Gun"));
        assertEquals("1 Cars", text(plan));
        assertEquals(1, plan.turnouts().get(0).guesses().stream().mapToInt(one -> one.pieces()).sum());
        shop.guessedLot("Attic", "Tin", "14 Foot", "6 Foot", "25.00");
        Plan lot = shop.plan(Supply.NONE, target("B", "18 Foot"));
        assertEquals("1 Tin", text(lot));
        assertEquals(4, lot.turnouts().get(0).guesses().get(0).pieces());
        assertEquals(List.of(), shop.plan(Supply.NONE, target("B", "14 Foot")).turnouts().get(0).guesses());
    }

    /** Two units want six foot each; eight are there, some of them to be built, and nobody sells any. */
    @Test
    void whatIsThereButTooLittleIsNamed() {
        Shop shop = new Shop().pieces("Foot", "Car").part("Man", "2 Foot", "1 Car").box("Cars", "1 Car", "5.00");
        Supply shelf = new Supply(List.of(new Stack(Shop.id("Foot"), 4, 0, 9)), List.of(new Frames(Shop.id("Man"), 2, false,
                List.of(new Way(Shop.id("Man").line(1), Map.of(Shop.id("Foot"), 2)),
                        new Way(Shop.id("Man").line(2), Map.of(Shop.id("Car"), 1))), -1, Fixing.GLUED)), List.of(), List.of());
        Answer answer = shop.ask(shelf, target("A", "6 Foot, 1 Car, 6 Foot"));
        assertEquals(List.of("A needs 12 of Foot; there are 8 at the most, and nobody sells it or anything that may stand for"
                + " it."), answer.findings().stream().map(Finding::message).toList());
        assertTrue(shop.ask(shelf, target("A", "4 Foot, 4 Foot")).plan().isPresent());
        shop.box("Feet", "5 Foot", "");
        assertEquals(List.of("buying.no-price"), shop.ask(shelf, target("A", "12 Foot")).findings().stream().map(Finding::code)
                .toList());
    }
}
