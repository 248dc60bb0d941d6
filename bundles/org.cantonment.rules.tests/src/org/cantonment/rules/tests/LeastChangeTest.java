package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.becomes;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.needs;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.strengths;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** The least change that makes a list legal, on cases worked out by hand. */
class LeastChangeTest {

    private static final int MOST = 20_000;

    private static BookOf causey(Line successor) {
        return new BookOf("Causey").eras("Reed-Year", "Dyke-War", "Long-Thaw")
                .unit("Staff", strength(1, 10), strength(1, 12).from("Long-Thaw"), needs(true, 1, "Staff-Stand"))
                .unit("Tread-Troop", strength(3, 24), strength(5, 40), strength(3, 27).from("Long-Thaw"),
                        strength(5, 45).from("Long-Thaw"), needs(true, 1, "Tread-Wagon"))
                .unit("Crank-Troop", strength(4, 20), available().to("Dyke-War"), successor,
                        needs(true, 1, "Crank-Car"))
                .unit("Pike-Car-Troop", strength(4, 26), available().from("Dyke-War"), needs(true, 1, "Pike-Car"))
                .unit("Marsh-Scouts", strength(2, 8), available().from("Dyke-War"), needs(true, 1, "Scout"))
                .formation("Squadron", billet("Command", Span.exactly(1), "Staff"),
                        billet("Line", Span.of(2, 3), "Tread-Troop", "Crank-Troop", "Pike-Car-Troop"),
                        billet("Scouts", Span.of(0, 1), "Marsh-Scouts"));
    }

    private static ListOf squadron() {
        return new ListOf("Ombra/1", "Causey").add(formation("Squadron", one("Staff"), one("Tread-Troop").of(5),
                one("Crank-Troop"), one("Crank-Troop"), one("Marsh-Scouts")));
    }

    private static Found search(BookOf book, String era, Fielding fielding, int wanted) {
        Ruling written = Court.ruling(Court.in("Causey/Dyke-War"), book);
        Ruling now = Court.ruling(Court.in("Causey/" + era), book);
        return LeastChange.search(now, written, squadron().build(), Situation.BARE.withPoints(100, Optional.empty()),
                fielding, wanted, MOST);
    }

    private static void assertAnswer(long moved, int units, long points, Answer answer) {
        assertEquals(List.of(moved, (long) units, points),
                List.of(answer.moved(), (long) answer.units(), answer.verdict().points()), answer.actions().toString());
    }

    @Test
    void inTheEraBeforeTheScoutsGo() {
        Found found = search(causey(becomes("Pike-Car-Troop")), "Reed-Year", Fielding.ALL, 1);
        assertAnswer(8, 1, 90, found.answers().get(0));
        assertEquals(List.of(new RemoveEntry(Id.of("Ombra/1#6"))), found.answers().get(0).actions());
    }

    @Test
    void inTheEraAfterOnePikeTroopComesForTwoCrankTroops() {
        Found found = search(causey(becomes("Pike-Car-Troop")), "Long-Thaw", Fielding.ALL, 2);
        assertTrue(found.complete());
        assertAnswer(66, 3, 91, found.answers().get(0));
        assertAnswer(67, 3, 92, found.answers().get(1));
    }

    @Test
    void whereTheSuccessorCountsTheDifferenceItIsSixAndTwenty() {
        Found found = search(causey(Line.becomesByDifference("Pike-Car-Troop")), "Long-Thaw", Fielding.ALL, 1);
        assertEquals(26, found.answers().get(0).moved());
        assertEquals(91, found.answers().get(0).verdict().points());
    }

    @Test
    void withoutPikeCarsTheTreadTroopOfThreeComes() {
        // Owned: one staff stand, eight tread wagons, two scouts, and cranks; no pike cars.
        Fielding owned = list -> {
            Set<Id> lacking = new TreeSet<>();
            for (Requirement need : list) {
                if (need.anyOf().contains(Id.of("Causey/Pike-Car"))) {
                    lacking.add(need.entry());
                }
            }
            return lacking;
        };
        Found found = search(causey(becomes("Pike-Car-Troop")), "Long-Thaw", owned, 1);
        assertTrue(found.complete());
        assertAnswer(67, 3, 92, found.answers().get(0));
    }

    @Test
    void theStraightSwapWithTheTreadTroopCutMoves110() {
        BookOf book = causey(becomes("Pike-Car-Troop")).limit("Both", bound(Span.exactly(2), "Pike-Car-Troop"));
        Found found = search(book, "Long-Thaw", Fielding.ALL, 1);
        assertAnswer(110, 5, 99, found.answers().get(0));
    }

    @Test
    void aLegalListNeedsNoChange() {
        assertAnswer(0, 0, 98, search(causey(becomes("Pike-Car-Troop")), "Dyke-War", Fielding.ALL, 1).answers().get(0));
    }

    @Test
    void tenPointsOfFootMoveLessThanStrikingATroop() {
        BookOf book = new BookOf("Book").eras("Long-Thaw").kind("Armour").unit("Tread-Troop", strength(1, 20), is("Armour"))
                .unit("Foot", strengths(1, 200, 1)).limit("Treads", bound(Span.atMost(3), "Tread-Troop"))
                .limit("Half", bound(Measure.PERCENT_OF_LIMIT, Span.atMost(50), Rounding.EXACT, "Armour"));
        BookOf winter = new BookOf("Winter", "Book").rounds(1, 4)
                .change(Direction.TIGHTEN, "Book/Treads", bound(Span.atMost(2), "Book/Tread-Troop"))
                .change(Direction.TIGHTEN, "Book/Half",
                        bound(Measure.PERCENT_OF_USED, Span.atMost(40), Rounding.EXACT, "Book/Armour"));
        BookOf weekend = new BookOf("Weekend", "Book").rounds(3, 3).change(Direction.LOOSEN, "Book/Treads",
                bound(Span.atMost(4), "Book/Tread-Troop"));
        ListOf list = new ListOf("Brack/2", "Book").add(some(3, "Tread-Troop"), one("Foot").of(80));
        Found second = search(Court.ruling(Court.in("Book/Long-Thaw", 2), book, winter, weekend), list);
        assertAnswer(20, 1, 120, second.answers().get(0));
        list = new ListOf("Brack/2", "Book").add(some(3, "Tread-Troop"), one("Foot").of(80));
        Found third = search(Court.ruling(Court.in("Book/Long-Thaw", 3), book, winter, weekend), list);
        assertAnswer(10, 1, 150, third.answers().get(0));
    }

    private static Found search(Ruling ruling, ListOf list) {
        return LeastChange.search(ruling, ruling, list.build(), Situation.BARE.withPoints(150, Optional.empty()),
                Fielding.ALL, 1, MOST);
    }

    @Test
    void anEmptyFormationIsFilledAsCheaplyAsCanBe() {
        BookOf book = causey(becomes("Pike-Car-Troop")).limit("Some", bound(Span.atLeast(1), "Squadron"));
        Ruling ruling = Court.ruling(Court.in("Causey/Dyke-War"), book);
        Found found = LeastChange.search(ruling, ruling, new ListOf("L", "Causey").build(), Situation.BARE,
                Fielding.ALL, 1, MOST);
        assertAnswer(50, 3, 50, found.answers().get(0));
        assertEquals(new AddUnit(Id.of("L"), false, Optional.empty(), Id.of("Causey/Squadron"), OptionalInt.empty(), 1),
                found.answers().get(0).actions().get(0));
    }

    @Test
    void aSearchThatIsCutShortSaysSoAndGivesALegalListAndItsBound() {
        Ruling written = Court.ruling(Court.in("Causey/Dyke-War"), causey(becomes("Pike-Car-Troop")));
        Ruling now = Court.ruling(Court.in("Causey/Long-Thaw"), causey(becomes("Pike-Car-Troop")));
        Found found = LeastChange.search(now, written, squadron().build(),
                Situation.BARE.withPoints(100, Optional.empty()), Fielding.ALL, 1, 3);
        assertTrue(!found.complete() && found.bound() >= 40 && found.bound() <= 66, "" + found.bound());
        assertTrue(found.answers().get(0).verdict().legal() && found.answers().get(0).moved() >= 66,
                "" + found.answers());
    }
}
