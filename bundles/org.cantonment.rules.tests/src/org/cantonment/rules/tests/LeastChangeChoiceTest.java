package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.becomes;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.dearer;
import static org.cantonment.rules.tests.Line.option;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.EraCase;
import org.cantonment.rules.change.EraVerdict;
import org.cantonment.rules.change.EraVerdicts;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** Which of several changes is taken, and what counts as one; worked out by hand. */
class LeastChangeChoiceTest {

    private static Found search(BookOf book, ListOf list, Situation situation) {
        Ruling ruling = Court.ruling(Court.in(book.id("Now").text()), book);
        return LeastChange.search(ruling, ruling, list.build(), situation, Fielding.ALL, 1, LeastChange.MOST);
    }

    private static Answer least(BookOf book, ListOf list, int points) {
        Found found = search(book, list, Situation.BARE.withPoints(points, Optional.empty()));
        assertTrue(found.complete());
        return found.answers().get(0);
    }

    private static BookOf book() {
        return new BookOf("B").eras("Now").unit("Raft", strength(1, 5)).unit("Punt", strength(1, 5))
                .unit("Skiff", strength(1, 6), strength(2, 9), option("Mast", 2));
    }

    @Test
    void ofEqualsTheOneThatStandsEarlierGoes() {
        assertEquals(List.of(new RemoveEntry(Id.of("L#1"))),
                least(book(), new ListOf("L", "B").add(one("Punt"), one("Raft")), 5).actions());
        assertEquals(List.of(new RemoveEntry(Id.of("L#1"))),
                least(book(), new ListOf("L", "B").add(one("Raft"), one("Punt")), 5).actions());
    }

    @Test
    void fewerUnitsComeBeforeWhatStandsEarlier() {
        BookOf book = book().unit("Barge", strength(1, 10));
        Answer answer = least(book, new ListOf("L", "B").add(one("Raft"), one("Punt"), one("Barge")), 10);
        assertEquals(List.of(new RemoveEntry(Id.of("L#3"))), answer.actions());
    }

    @Test
    void aStrengthOrAnOptionMovesTheDifference() {
        Answer weaker = least(book(), new ListOf("L", "B").add(one("Skiff").of(2)), 6);
        assertEquals(List.of(new SetStrength(Id.of("L#1"), 1)), weaker.actions());
        assertEquals(3, weaker.moved());
        Answer bare = least(book(), new ListOf("L", "B").add(one("Skiff").of(2).with(1, "Mast")), 9);
        assertEquals(List.of(new SetOption(Id.of("L#1"), "Mast", 0)), bare.actions());
        assertEquals(2, bare.moved());
    }

    @Test
    void whatIsTakenOutMovesItsSurchargeToo() {
        BookOf book = new BookOf("B").eras("Now").unit("Raft", strength(1, 5), dearer(4, 2))
                .limit("Few", bound(Span.atMost(2), "Raft"));
        assertEquals(9, least(book, new ListOf("L", "B").add(some(3, "Raft")), 100).moved());
    }

    private static BookOf squads() {
        return book().formation("Squad", billet("Line", Span.of(1, 1), "Raft"), billet("Rest", Span.of(0, 1), "Raft",
                "Punt"));
    }

    @Test
    void aPinThatIsInTheWayGoesForNothing() {
        Answer answer = least(squads(), new ListOf("L", "B").add(formation("Squad", one("Raft").in("Line"),
                one("Raft").in("Line"))), 100);
        assertEquals(List.of(new Unpin(Id.of("L#2"))), answer.actions());
        assertEquals(List.of(0L, 0), List.of(answer.moved(), answer.units()));
    }

    @Test
    void fromOneFormationToAnotherIsOutAndIn() {
        BookOf book = squads().limit("Two", bound(Span.exactly(3), "Raft"));
        Answer answer = least(book, new ListOf("L", "B").add(formation("Squad", some(3, "Raft")),
                formation("Squad", one("Punt"))), 100);
        assertEquals(List.of(10L, 2), List.of(answer.moved(), answer.units()));
        assertEquals(2, answer.actions().size());
        assertEquals(new AddUnit(Id.of("L#3"), false, Optional.empty(), Id.of("B/Raft"), OptionalInt.of(1), 1),
                answer.actions().get(1));
    }

    @Test
    void twoFormationsThatComeMayBeFilledUnlike() {
        BookOf book = squads().limit("Squads", bound(Span.atLeast(2), "Squad")).limit("Punts",
                bound(Span.exactly(1), "Punt"));
        Answer answer = least(book, new ListOf("L", "B"), 100);
        assertEquals(List.of(15L, 3), List.of(answer.moved(), answer.units()));
    }

    @Test
    void aContingentIsChangedUnderItsOwnBook() {
        BookOf fens = new BookOf("Fen").eras("Now").unit("Reeds", strength(2, 7), strength(3, 11));
        ListOf list = new ListOf("L", "B").add(one("Raft")).contingent(new ListOf("L/Fens", "Fen").to(20)
                .add(some(2, "Reeds").of(3)));
        Situation situation = Situation.BARE.withContingents(Map.of(Id.of("L/Fens"),
                Court.ruling(Court.in("Fen/Now"), fens)));
        Answer answer = search(book(), list, situation).answers().get(0);
        assertEquals(List.of(4L, 1, true), List.of(answer.moved(), answer.units(), answer.verdict().legal()));
    }

    @Test
    void whatCannotBeMendedHasNoAnswerAndTheSearchEnds() {
        BookOf book = book().limit("Much", bound(Span.atLeast(3), "Raft"));
        Found found = search(book, new ListOf("L", "B"), Situation.BARE.withPoints(14, Optional.empty()));
        assertTrue(found.complete() && found.answers().isEmpty());
    }

    @Test
    void aSearchThatIsNoLongerWantedEnds() {
        assertThrows(Cancelled.class, () -> search(book(), new ListOf("L", "B").add(one("Raft")),
                Situation.BARE.withPoints(1, Optional.empty()).withCancel(() -> true)));
    }

    @Test
    void allErasAreAnsweredAtOnce() {
        BookOf book = new BookOf("B").eras("Then", "Now").unit("Raft", strength(1, 5), available().to("Then"),
                becomes("Punt")).unit("Punt", strength(1, 6)).unit("Skiff", strength(1, 8)).limit("Some",
                        bound(Span.atLeast(1), "Raft", "Punt", "Skiff"));
        Ruling then = Court.ruling(Court.in("B/Then"), book);
        Ruling now = Court.ruling(Court.in("B/Now"), book);
        List<EraCase> eras = new ArrayList<>();
        Fielding all = needs -> Set.of();
        for (Ruling ruling : List.of(then, now)) {
            eras.add(new EraCase(ruling.occasion().era().orElseThrow(), ruling, Situation.BARE, Optional.of(all)));
        }
        List<String> told = new ArrayList<>();
        Progress progress = (done, of, doing) -> told.add(done + "/" + of);
        List<EraVerdict> verdicts = EraVerdicts.of(new ListOf("L", "B").add(one("Raft")).build(), then, eras,
                LeastChange.MOST, progress);
        assertEquals(List.of("0/2", "1/2", "2/2"), told);
        assertTrue(verdicts.get(0).verdict().legal() && verdicts.get(0).atLarge().isEmpty()
                && verdicts.get(0).owned().isEmpty());
        List<Action> actions = verdicts.get(1).atLarge().orElseThrow().answers().get(0).actions();
        assertEquals(11, verdicts.get(1).owned().orElseThrow().answers().get(0).moved());
        assertEquals(1, actions.size());
    }
}
